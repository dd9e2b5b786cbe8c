import { describe, expect, test } from 'vitest'
import { testLengthFactor, unitHoursToShow } from '@/shared/reliability/demonstration/demonstration'
import {
  meanTimeInterval,
  meanTimeLowerBound,
  meanTimeUpperBound,
} from '@/shared/reliability/demonstration/mean-time-bounds'
import {
  reliabilityShown,
  successRunUnits,
  unitsToTest,
} from '@/shared/reliability/demonstration/success-run'
import reference from '@/tests/reference/statistics/reliability.json'

describe('mean time to failure', () => {
  // NIST/SEMATECH e-Handbook 8.4.5.1 (from memory, recomputed) and two published examples (read).
  test('800 h and two failures, 90 %: 127.07 to 2251.23 h', () => {
    const found = meanTimeInterval({ failures: 2, unitHours: 800, endedBy: 'time' }, 0.9)
    const [lower, upper] = reference.meanTime.value['NIST: T=800,r=2,90% two-sided']
    expect(found.lower).toBeCloseTo(lower!, 6)
    expect(found.upper).toBeCloseTo(upper!, 5)
  })

  test('19 520 h and seven failures, 80 % two-sided; 10 000 h and six, 80 % one-sided', () => {
    expect(meanTimeInterval({ failures: 7, unitHours: 19520, endedBy: 'time' }, 0.8).lower).toBeCloseTo(
      reference.meanTime.value['T=19520,r=7,80% two-sided'],
      7,
    )
    expect(meanTimeLowerBound({ failures: 6, unitHours: 10000, endedBy: 'time' }, 0.8)).toBeCloseTo(
      reference.meanTime.value['T=10000,r=6,80% one-sided'],
      7,
    )
  })

  test('without a failure the mean time has no upper bound', () => {
    const none = { failures: 0, unitHours: 1000, endedBy: 'time' } as const
    expect(meanTimeInterval(none, 0.9).upper).toBe(Infinity)
    expect(meanTimeUpperBound(none, 0.9)).toBe(Infinity)
  })
})

describe('demonstration', () => {
  // Computed from chi-square; NIST/SEMATECH e-Handbook 8.3.1.1: 200 h, 90 %, four failures, 1598 h (from memory).
  test('test-length factors', () => {
    for (const [confidence, factors] of Object.entries(reference.testFactors.value))
      factors.forEach((factor, failuresAllowed) =>
        expect(testLengthFactor({ confidence: Number(confidence), failuresAllowed })).toBeCloseTo(factor, 4),
      )
    expect(200 * testLengthFactor({ confidence: 0.9, failuresAllowed: 4 })).toBeCloseTo(1598.72, 1)
  })

  test.each(reference.jointHours.rows)('$FIT FIT at $CL without a failure', (row) => {
    const hours = unitHoursToShow(row.FIT, { confidence: row.CL, failuresAllowed: 0 })
    expect(hours / row.joint_hours).toBeCloseTo(1, 10)
  })

  test('a confidence of 1 cannot be reached', () => {
    expect(() => unitHoursToShow(1, { confidence: 1, failuresAllowed: 0 })).toThrow(RangeError)
    expect(() => unitHoursToShow(0, { confidence: 0.9, failuresAllowed: 0 })).toThrow(RangeError)
  })
})

describe('success run', () => {
  test.each(reference.successRun.rows)('reliability $R at $CL needs $n', ({ R, CL, n }) => {
    expect(successRunUnits({ reliability: R, confidence: CL })).toBe(n)
    expect(unitsToTest({ reliability: R, confidence: CL }, 0)).toBe(n)
    expect(reliabilityShown(n, CL)).toBeGreaterThanOrEqual(R - 1e-12)
    if (n > 1) expect(reliabilityShown(n - 1, CL)).toBeLessThan(R)
  })

  test('three lifetimes at shape 1 bring 2995 down to 999', () => {
    const claim = { reliability: 0.999, confidence: 0.95 }
    expect(successRunUnits(claim, { lifetimes: 3, shape: 1 })).toBe(999)
  })

  test.each(reference.failuresAllowed.rows)(
    '$R at $CL with $f failures allowed needs $n',
    ({ R, CL, f, n }) => {
      expect(unitsToTest({ reliability: R, confidence: CL }, f)).toBe(n)
    },
  )

  test('0.5 at 0.5 is just one unit, met exactly', () => {
    expect(successRunUnits({ reliability: 0.5, confidence: 0.5 })).toBe(1)
    expect(unitsToTest({ reliability: 0.5, confidence: 0.5 }, 0)).toBe(1)
  })

  // By hand: 0.9² = 0.81 and 0.8³ = 0.512, so two and three units leave just the risk allowed.
  test.each([
    [0.9, 0.19, 2],
    [0.8, 0.488, 3],
  ])('reliability %f at %f is met exactly, and rounding adds no unit', (reliability, confidence, units) => {
    expect(successRunUnits({ reliability, confidence })).toBe(units)
    expect(unitsToTest({ reliability, confidence }, 0)).toBe(units)
  })

  test('claims of 0 or 1 are refused', () => {
    expect(() => successRunUnits({ reliability: 1, confidence: 0.9 })).toThrow(RangeError)
    expect(() => unitsToTest({ reliability: 0.9, confidence: 0 }, 0)).toThrow(RangeError)
    expect(() => reliabilityShown(0, 0.9)).toThrow(RangeError)
  })
})
