import { describe, expect, test } from 'vitest'
import { defectsPerMillionInterval } from '@/shared/statistics/intervals/defects-per-million'
import { defectsPerMillionJoints } from '@/shared/statistics/intervals/defects-per-million'
import { exactRateInterval, exactRateLowerBound } from '@/shared/statistics/intervals/exact-poisson-rate'
import { exactRateUpperBound } from '@/shared/statistics/intervals/exact-poisson-rate'
import { exactProportionInterval } from '@/shared/statistics/intervals/exact-proportion'
import { exactProportionLowerBound } from '@/shared/statistics/intervals/exact-proportion'
import { exactProportionUpperBound } from '@/shared/statistics/intervals/exact-proportion'
import { failureRateInterval, failureRateLowerBound } from '@/shared/statistics/intervals/failure-rate'
import { failureRateUpperBound } from '@/shared/statistics/intervals/failure-rate'
import { minCount } from '@/shared/statistics/intervals/min-count'
import { wilsonProportionInterval } from '@/shared/statistics/intervals/wilson-proportion'
import reference from '@/tests/reference/statistics/intervals.json'
import performance from '@/tests/reference/statistics/sampling-performance.json'
import { relativeError } from './relative-error'

const expectClose = (actual: number, expected: number, within = 1e-10) =>
  expect(relativeError(actual, expected), `${actual} against ${expected}`).toBeLessThan(within)

describe('proportions', () => {
  // Clopper and Pearson 1934, Wilson 1927: computed with scipy.
  test.each(reference.proportions.rows)('$x of $n at $conf', ({ x, n, conf, ...row }) => {
    const tally = { found: x, inspected: n }
    const exact = exactProportionInterval(tally, conf)
    expectClose(exact.lower, row.clopper_pearson[0]!)
    expectClose(exact.upper, row.clopper_pearson[1]!)
    expectClose(exactProportionUpperBound(tally, conf), row.one_sided_upper_exact)
    const wilson = wilsonProportionInterval(tally, conf)
    // The closed form leaves −6.5e-18 at 0 found; a proportion is not negative.
    expect(wilson.lower).toBeCloseTo(Math.max(0, row.wilson[0]!), 14)
    expect(wilson.upper).toBeCloseTo(Math.min(1, row.wilson[1]!), 14)
    expect(wilson.lower).toBeGreaterThanOrEqual(0)
  })

  // NIST/SEMATECH e-Handbook 7.2.4.1: 4 of 20 at 90 %. Printed .071354 and .401029 (from memory);
  // the last digit of the upper one should be 8.
  test('the handbook’s 4 of 20', () => {
    const { found, inspected, confidence, values, published } = reference.nist
    const { lower, upper } = exactProportionInterval({ found, inspected }, confidence)
    expectClose(lower, values[0]!)
    expectClose(upper, values[1]!)
    expect(lower).toBeCloseTo(published[0]!, 6)
    expect(Math.abs(upper - published[1]!)).toBeLessThan(1.5e-6)
  })

  // Newcombe 1998, table I: 81 of 263 (published figures from memory).
  test('Newcombe’s 81 of 263', () => {
    const { found, inspected, confidence, publishedWilson, publishedExact } = reference.newcombe
    const wilson = wilsonProportionInterval({ found, inspected }, confidence)
    const exact = exactProportionInterval({ found, inspected }, confidence)
    expect([wilson.lower, wilson.upper].map((x) => Number(x.toFixed(4)))).toEqual(publishedWilson)
    expect([exact.lower, exact.upper].map((x) => Number(x.toFixed(4)))).toEqual(publishedExact)
  })

  test('a lower bound mirrors the upper bound of the sound ones', () => {
    const lower = exactProportionLowerBound({ found: 7, inspected: 40 }, 0.9)
    expectClose(lower, 1 - exactProportionUpperBound({ found: 33, inspected: 40 }, 0.9))
  })

  // The rule of three, 3/n, is an approximation from above of 1 − 0.05^(1/n).
  test.each(performance.ruleOfThree.rows)('none in $n: exact beside the rule of three', (row) => {
    const bound = exactProportionUpperBound({ found: 0, inspected: row.n }, 0.95)
    expectClose(bound, row.exact_one_sided_95)
    expect(bound).toBeLessThan(3 / row.n)
  })

  test('everything found leaves no upper bound below 1', () => {
    expect(exactProportionInterval({ found: 5, inspected: 5 }, 0.95).upper).toBe(1)
    expect(wilsonProportionInterval({ found: 5, inspected: 5 }, 0.95).upper).toBe(1)
  })

  test.each([
    ['none inspected', { found: 0, inspected: 0 }, 0.95],
    ['more found than inspected', { found: 6, inspected: 5 }, 0.95],
    ['half a find', { found: 0.5, inspected: 5 }, 0.95],
    ['NaN inspected', { found: 0, inspected: NaN }, 0.95],
    ['certainty', { found: 0, inspected: 5 }, 1],
    ['95 for 95 %', { found: 0, inspected: 5 }, 95],
  ])('%s is refused', (_, tally, confidence) => {
    expect(() => exactProportionInterval(tally, confidence)).toThrow(RangeError)
    expect(() => exactProportionUpperBound(tally, confidence)).toThrow(RangeError)
    expect(() => wilsonProportionInterval(tally, confidence)).toThrow(RangeError)
  })
})

describe('rates', () => {
  // Garwood 1936: computed with scipy.
  test.each(reference.garwood.rows)('$k events', ({ k, ...row }) => {
    const observed = { events: k, exposure: 1 }
    const at95 = exactRateInterval(observed, 0.95)
    const at90 = exactRateInterval(observed, 0.9)
    expectClose(at95.lower, row.two_sided95[0]!)
    expectClose(at95.upper, row.two_sided95[1]!)
    expectClose(at90.lower, row.two_sided90[0]!)
    expectClose(at90.upper, row.two_sided90[1]!)
    expectClose(exactRateUpperBound(observed, 0.95), row.upper95_one_sided)
    expectClose(exactRateLowerBound(observed, 0.95), row.two_sided90[0]!)
  })

  // Printed bounds (read): none, 3.689 two-sided and 2.996 one-sided; ten, 4.80 to 18.39.
  test('the printed bounds for none and ten', () => {
    const ten = exactRateInterval({ events: 10, exposure: 1 }, 0.95)
    expect(exactRateInterval({ events: 0, exposure: 1 }, 0.95).upper.toFixed(3)).toBe('3.689')
    expect(exactRateUpperBound({ events: 0, exposure: 1 }, 0.95).toFixed(3)).toBe('2.996')
    expect([ten.lower.toFixed(2), ten.upper.toFixed(2)]).toEqual(['4.80', '18.39'])
  })

  test.each(reference.ratesOverExposure.rows)('$defects defects on $units units', (row) => {
    const { lower, upper } = exactRateInterval({ events: row.defects, exposure: row.units }, 0.95)
    expectClose(lower, row.ci95[0]!)
    expectClose(upper, row.ci95[1]!)
  })

  test('no exposure is refused', () => {
    expect(() => exactRateUpperBound({ events: 0, exposure: 0 }, 0.95)).toThrow(/exposure must be above zero/)
    expect(() => exactRateUpperBound({ events: 1, exposure: NaN }, 0.95)).toThrow(RangeError)
  })
})

describe('defective joints per million', () => {
  test('the interval is the exact proportion, in millionths', () => {
    const { lower, upper } = defectsPerMillionInterval({ defectiveJoints: 4, jointsSeen: 20 }, 0.9)
    expectClose(lower, 1e6 * reference.nist.values[0]!)
    expectClose(upper, 1e6 * reference.nist.values[1]!)
    expect(defectsPerMillionJoints({ defectiveJoints: 4, jointsSeen: 20 })).toBe(200_000)
  })
  test('nothing seen is refused', () => {
    expect(() => defectsPerMillionJoints({ defectiveJoints: 0, jointsSeen: 0 })).toThrow(RangeError)
  })
})

describe('a least count', () => {
  // Zero-failure success run, n = ln(1 − C) / ln R: 59 for 95 %/95 %, 299 for 1 %, 598 for 0.5 % (read).
  test.each([
    [0.05, 59],
    [0.01, 299],
    [0.005, 598],
  ])('a share of %s at most is shown by %i without one', (share, sample) => {
    const shows = (count: number) =>
      count > 0 && exactProportionUpperBound({ found: 0, inspected: count }, 0.95) <= share
    expect(minCount(shows, 0, 10)).toBe(sample)
  })
  test('a count that is never enough is an error, not an endless search', () => {
    expect(() => minCount(() => false, 0, 1)).toThrow('No count that can be reached is enough.')
  })
})

describe('failure rates', () => {
  // NIST/SEMATECH e-Handbook 8.4.5.1: 2 failures in 800 h, 90 % two-sided, mean time 127 to 2251 h
  // (from memory, recomputed); the others read and recomputed.
  test.each(reference.failureRates.rows)('$failures failures in $unitHours h, $sides-sided', (row) => {
    const life = { failures: row.failures, unitHours: row.unitHours, endedBy: 'time' as const }
    const upper =
      row.sides === 2
        ? failureRateInterval(life, row.confidence).upper
        : failureRateUpperBound(life, row.confidence)
    expectClose(1 / upper, row.meanTimeLower, 1e-9)
    if (row.meanTimeUpper !== undefined) {
      expectClose(1 / failureRateInterval(life, row.confidence).lower, row.meanTimeUpper, 1e-9)
    }
  })

  // NIST/SEMATECH e-Handbook 8.3.1.1 type of table (computed): hours over the mean time shown.
  test.each(Object.entries(reference.testLengths.rows))(
    'test lengths at confidence %s',
    (confidence, row) => {
      row.forEach((factor, failures) => {
        const bound = failureRateUpperBound({ failures, unitHours: 1, endedBy: 'time' }, Number(confidence))
        expect(bound).toBeCloseTo(factor, 3)
      })
    },
  )

  test('no failure: −ln(1 − C) over the hours', () => {
    const bound = failureRateUpperBound({ failures: 0, unitHours: 1000, endedBy: 'time' }, 0.6)
    expectClose(bound, -Math.log(0.4) / 1000)
    expect(failureRateLowerBound({ failures: 0, unitHours: 1000, endedBy: 'time' }, 0.6)).toBe(0)
  })

  test('ended by the r-th failure, the upper bound is that of r − 1 failures ended by time', () => {
    const byFailure = failureRateUpperBound({ failures: 5, unitHours: 3000, endedBy: 'failure' }, 0.9)
    const byTime = failureRateUpperBound({ failures: 4, unitHours: 3000, endedBy: 'time' }, 0.9)
    expect(byFailure).toBe(byTime)
  })

  test('a test cannot have been ended by a failure that did not happen', () => {
    const test = { failures: 0, unitHours: 100, endedBy: 'failure' as const }
    expect(() => failureRateUpperBound(test, 0.9)).toThrow('whole number of 1 or more')
  })
})
