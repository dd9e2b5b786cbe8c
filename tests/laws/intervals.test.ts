import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { binomialCdf, binomialSf } from '@/shared/statistics/distributions/binomial'
import { exactRateInterval } from '@/shared/statistics/intervals/exact-poisson-rate'
import { exactProportionInterval } from '@/shared/statistics/intervals/exact-proportion'
import { exactProportionUpperBound } from '@/shared/statistics/intervals/exact-proportion'
import { failureRateUpperBound } from '@/shared/statistics/intervals/failure-rate'
import { budgetStatus } from '@/shared/inspection/budget-status'
import { wilsonProportionInterval } from '@/shared/statistics/intervals/wilson-proportion'
import { whatTheSampleProves } from '@/shared/statistics/sampling/what-the-sample-proves'

const confidence = fc.double({ min: 0.5, max: 0.999, noNaN: true })
const tally = fc
  .record({ inspected: fc.integer({ min: 1, max: 100_000 }), pick: fc.nat() })
  .map(({ inspected, pick }) => ({ inspected, found: pick % (inspected + 1) }))

describe('intervals for a proportion', () => {
  test.each([
    ['exact', exactProportionInterval],
    ['Wilson', wilsonProportionInterval],
  ])('%s: holds the estimate and lies within 0 and 1', (_, interval) => {
    fc.assert(
      fc.property(tally, confidence, (tally, confidence) => {
        const { lower, upper } = interval(tally, confidence)
        const estimate = tally.found / tally.inspected
        expect(lower).toBeGreaterThanOrEqual(0)
        expect(lower).toBeLessThanOrEqual(estimate + 1e-12)
        expect(upper).toBeGreaterThanOrEqual(estimate - 1e-12)
        expect(upper).toBeLessThanOrEqual(1)
      }),
    )
  })
  test.each([
    ['exact', exactProportionInterval],
    ['Wilson', wilsonProportionInterval],
  ])('%s: is shorter when ten times as many show the same share', (_, interval) => {
    fc.assert(
      fc.property(tally, confidence, ({ found, inspected }, confidence) => {
        const few = interval({ found, inspected }, confidence)
        const many = interval({ found: 10 * found, inspected: 10 * inspected }, confidence)
        expect(many.upper - many.lower).toBeLessThan(few.upper - few.lower)
      }),
    )
  })
  test('exact: widens with the confidence', () => {
    fc.assert(
      fc.property(tally, confidence, (tally, confidence) => {
        const wide = exactProportionInterval(tally, confidence)
        const narrow = exactProportionInterval(tally, confidence / 2)
        expect(wide.lower).toBeLessThanOrEqual(narrow.lower)
        expect(wide.upper).toBeGreaterThanOrEqual(narrow.upper)
      }),
    )
  })
  test('exact: at each bound the tail beyond what was found has just the risk', () => {
    fc.assert(
      fc.property(tally, confidence, ({ found, inspected }, confidence) => {
        const { lower, upper } = exactProportionInterval({ found, inspected }, confidence)
        const risk = (1 - confidence) / 2
        if (found < inspected) expect(binomialCdf(found, inspected, upper)).toBeCloseTo(risk, 9)
        if (found > 0) expect(binomialSf(found - 1, inspected, lower)).toBeCloseTo(risk, 9)
      }),
    )
  })
  test('one more found never lowers the upper bound, one more inspected never raises it', () => {
    fc.assert(
      fc.property(tally, confidence, ({ found, inspected }, confidence) => {
        const bound = exactProportionUpperBound({ found, inspected }, confidence)
        const slack = 1 + 1e-12
        expect(
          exactProportionUpperBound({ found, inspected: inspected + 1 }, confidence),
        ).toBeLessThanOrEqual(bound * slack)
        if (found < inspected) {
          const more = exactProportionUpperBound({ found: found + 1, inspected }, confidence)
          expect(more * slack).toBeGreaterThanOrEqual(bound)
        }
      }),
    )
  })
})

describe('rates', () => {
  const events = fc.nat(5000)
  const exposure = fc.double({ min: 1e-3, max: 1e12, noNaN: true })

  test('the interval holds the estimate and shrinks with the exposure', () => {
    fc.assert(
      fc.property(events, exposure, confidence, (events, exposure, confidence) => {
        const { lower, upper } = exactRateInterval({ events, exposure }, confidence)
        expect(lower).toBeLessThanOrEqual(events / exposure)
        expect(upper).toBeGreaterThan(events / exposure)
        const longer = exactRateInterval({ events, exposure: 2 * exposure }, confidence)
        expect(longer.upper).toBeCloseTo(upper / 2, 12)
      }),
    )
  })
  test('a test ended by a failure never shows less than the same test ended by time', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 500 }),
        exposure,
        confidence,
        (failures, unitHours, confidence) => {
          const byTime = failureRateUpperBound({ failures, unitHours, endedBy: 'time' }, confidence)
          const byFailure = failureRateUpperBound({ failures, unitHours, endedBy: 'failure' }, confidence)
          expect(byFailure).toBeLessThan(byTime)
        },
      ),
    )
  })
})

describe('joints still to see', () => {
  const budget = fc.double({ min: 1, max: 50_000, noNaN: true })
  const seen = fc
    .record({ jointsSeen: fc.integer({ min: 1, max: 1_000_000 }), pick: fc.nat(20) })
    .map(({ jointsSeen, pick }) => ({ jointsSeen, defective: Math.min(pick, jointsSeen) }))
  const statusOf = (
    { jointsSeen, defective }: { jointsSeen: number; defective: number },
    perMillion: number,
    sure: number,
  ) => budgetStatus({ jointsSeen, defective }, perMillion, sure)

  test('so many more show the budget, one fewer does not', () => {
    fc.assert(
      fc.property(seen, budget, confidence, (seen, perMillion, sure) => {
        const { jointsStillToSee: more } = statusOf(seen, perMillion, sure)
        const after = (extra: number) =>
          statusOf({ ...seen, jointsSeen: seen.jointsSeen + extra }, perMillion, sure).upper
        expect(after(more)).toBeLessThanOrEqual(perMillion * (1 + 1e-8))
        if (more > 1) expect(after(more - 1)).toBeGreaterThan(perMillion * (1 - 1e-8))
      }),
    )
  })
  test('a looser budget never asks for more', () => {
    fc.assert(
      fc.property(seen, budget, confidence, (seen, perMillion, sure) => {
        expect(statusOf(seen, 2 * perMillion, sure).jointsStillToSee).toBeLessThanOrEqual(
          statusOf(seen, perMillion, sure).jointsStillToSee,
        )
      }),
    )
  })
  test('a rate is never said to lie both above and below', () => {
    fc.assert(
      fc.property(seen, confidence, (seen, sure) => {
        const { lower, upper, perMillion } = statusOf(seen, 100, Math.max(sure, 0.6))
        expect(lower).toBeLessThanOrEqual(perMillion)
        expect(upper).toBeGreaterThanOrEqual(Math.min(perMillion, 1e6) * (1 - 1e-9))
      }),
    )
  })
})

describe('what the sample proves', () => {
  const sample = fc
    .record({ lotSize: fc.integer({ min: 1, max: 3000 }), a: fc.nat(), b: fc.nat(10) })
    .map(({ lotSize, a, b }) => {
      const sampleSize = 1 + (a % lotSize)
      return { lotSize, sampleSize, defectives: Math.min(b, sampleSize) }
    })

  test('no lot bound is below what was found, nor above what is left to doubt', () => {
    fc.assert(
      fc.property(sample, confidence, (sample, confidence) => {
        const { lotDefectivesAtMost, lotFractionAtMost } = whatTheSampleProves(sample, confidence)
        expect(lotDefectivesAtMost).toBeGreaterThanOrEqual(sample.defectives)
        expect(lotDefectivesAtMost).toBeLessThanOrEqual(
          sample.lotSize - sample.sampleSize + sample.defectives,
        )
        expect(lotFractionAtMost).toBe(lotDefectivesAtMost / sample.lotSize)
      }),
    )
  })
  test('a larger share of the lot never proves less about it', () => {
    fc.assert(
      fc.property(sample, confidence, (sample, confidence) => {
        fc.pre(sample.sampleSize < sample.lotSize)
        const larger = { ...sample, sampleSize: sample.sampleSize + 1 }
        const before = whatTheSampleProves(sample, confidence).lotDefectivesAtMost
        expect(whatTheSampleProves(larger, confidence).lotDefectivesAtMost).toBeLessThanOrEqual(before)
      }),
    )
  })
})
