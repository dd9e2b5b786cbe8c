import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { cohenKappa } from '@/shared/statistics/agreement/cohen-kappa'
import { fleissKappa } from '@/shared/statistics/agreement/fleiss-kappa'
import { capabilityIndices } from '@/shared/statistics/capability/indices'
import { cpkInterval, cpkLowerBound } from '@/shared/statistics/capability/intervals'
import { directionEffect } from '@/shared/statistics/comparison/direction-effect'
import { exactBinomialPValue } from '@/shared/statistics/comparison/exact-binomial-test'
import { paretoOrder } from '@/shared/statistics/comparison/pareto'
import { gaugeSpreadByRanges } from '@/shared/statistics/gauge/by-ranges'
import { gaugeSpreadByVariance } from '@/shared/statistics/gauge/by-variance'
import { limitCrossing } from '@/shared/statistics/regression/limit-crossing'
import { predictAt } from '@/shared/statistics/regression/prediction'
import { fitLine } from '@/shared/statistics/regression/straight-line'

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
/** In hundredths: nothing measured differs by 10⁻³²³. */
const reading = (min: number, max: number) =>
  fc.integer({ min: min * 100, max: max * 100 }).map((n) => n / 100)

describe('capability', () => {
  const process = fc.record({ mean: reading(-50, 50), sigma: number(0.01, 20) })
  const limits = fc
    .record({ lower: reading(-60, 0), room: reading(1, 100) })
    .map(({ lower, room }) => ({ lower, upper: lower + room }))

  test('Cpk never exceeds Cp, nor Cpm at any target', () => {
    fc.assert(
      fc.property(limits, process, number(-60, 60), (bounds, spread, target) => {
        const { cp, cpk, cpm } = capabilityIndices({ ...bounds, target }, spread)
        expect(cpk).toBeLessThanOrEqual(cp! + 1e-9)
        expect(cpm).toBeLessThanOrEqual(cp!)
      }),
    )
  })

  test('Cpk is positive exactly when the mean lies inside the limits', () => {
    fc.assert(
      fc.property(limits, process, (bounds, spread) => {
        const inside = spread.mean > bounds.lower && spread.mean < bounds.upper
        expect(capabilityIndices(bounds, spread).cpk > 0).toBe(inside)
      }),
    )
  })

  test('a looser limit never lowers Cpk', () => {
    fc.assert(
      fc.property(limits, process, number(0, 50), (bounds, spread, more) => {
        const looser = { ...bounds, upper: bounds.upper + more }
        expect(capabilityIndices(looser, spread).cpk).toBeGreaterThanOrEqual(
          capabilityIndices(bounds, spread).cpk,
        )
      }),
    )
  })

  test('the bound proves less than the estimate, and more readings prove more', () => {
    fc.assert(
      fc.property(
        number(-1, 4),
        fc.integer({ min: 3, max: 500 }),
        number(0.51, 0.999),
        (cpk, readings, confidence) => {
          const basis = (count: number) => ({ readings: count, degreesOfFreedom: count - 1 })
          const bound = cpkLowerBound(cpk, basis(readings), confidence)
          expect(bound).toBeLessThan(cpk)
          expect(cpkLowerBound(cpk, basis(readings + 1), confidence)).toBeGreaterThan(bound)
          expect(cpkInterval(cpk, basis(readings), confidence).lower).toBeLessThan(bound)
        },
      ),
    )
  })
})

describe('agreement', () => {
  const table = fc.array(fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 3, maxLength: 3 }), {
    minLength: 3,
    maxLength: 3,
  })

  test('kappa never exceeds 1, reaches it only when every call agrees, and does not care who is first', () => {
    fc.assert(
      fc.property(table, (calls) => {
        fc.pre(calls.flat().some((count) => count > 0))
        const { kappa } = cohenKappa(calls, 0.95)
        if (kappa === undefined) return
        const apart = calls.some((row, i) => row.some((count, j) => i !== j && count > 0))
        expect(kappa).toBeLessThanOrEqual(1 + 1e-12)
        expect(kappa > 1 - 1e-12).toBe(!apart)
        const swapped = calls.map((_, i) => calls.map((row) => row[i]!))
        expect(cohenKappa(swapped, 0.95).kappa).toBeCloseTo(kappa, 10)
      }),
    )
  })

  test('with two inspectors of equal shares, Fleiss and Cohen agree', () => {
    // A symmetric table has equal shares, and then both kappas are one formula.
    fc.assert(
      fc.property(
        fc.tuple(...Array.from({ length: 3 }, () => fc.integer({ min: 1, max: 9 }))),
        ([a, b, c]) => {
          const cohen = cohenKappa(
            [
              [a!, b!],
              [b!, c!],
            ],
            0.95,
          )
          const objects = [
            ...Array.from({ length: a! }, () => [2, 0]),
            ...Array.from({ length: 2 * b! }, () => [1, 1]),
            ...Array.from({ length: c! }, () => [0, 2]),
          ]
          expect(fleissKappa(objects).kappa).toBeCloseTo(cohen.kappa!, 10)
        },
      ),
    )
  })
})

describe('gauge studies', () => {
  const study = fc
    .array(
      fc.array(fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 3, maxLength: 3 }), {
        minLength: 2,
        maxLength: 2,
      }),
      {
        minLength: 3,
        maxLength: 5,
      },
    )
    .filter((parts) => new Set(parts.flat(2)).size > 1)

  test('spreads add up in squares, whatever the method', () => {
    fc.assert(
      fc.property(study, (parts) => {
        for (const spread of [
          gaugeSpreadByRanges(parts),
          gaugeSpreadByVariance(parts, { branch: 'pooled' }),
          gaugeSpreadByVariance(parts, { branch: 'with-interaction' }),
        ]) {
          expect(spread.gauge ** 2).toBeCloseTo(spread.repeatability ** 2 + spread.reproducibility ** 2, 7)
          expect(spread.total ** 2).toBeCloseTo(spread.gauge ** 2 + spread.parts ** 2, 7)
        }
      }),
    )
  })

  test('the analysis of variance takes up the whole spread, and forgets a common offset', () => {
    fc.assert(
      fc.property(study, fc.integer({ min: -500, max: 500 }), (parts, by) => {
        const { table } = gaugeSpreadByVariance(parts)
        const readings = parts.flat(2)
        const centre = readings.reduce((sum, value) => sum + value, 0) / readings.length
        const total = readings.reduce((sum, value) => sum + (value - centre) ** 2, 0)
        const taken = Object.values(table).reduce((sum, line) => sum + line.sumOfSquares, 0)
        expect(taken).toBeCloseTo(total, 6)
        const moved = parts.map((part) => part.map((cell) => cell.map((value) => value + by)))
        expect(gaugeSpreadByVariance(moved).gauge).toBeCloseTo(gaugeSpreadByVariance(parts).gauge, 6)
      }),
    )
  })
})

describe('straight lines', () => {
  const points = fc
    .array(fc.tuple(fc.integer({ min: 0, max: 100 }), fc.integer({ min: -100, max: 100 })), {
      minLength: 3,
      maxLength: 30,
    })
    .filter((pairs) => new Set(pairs.map(([x]) => x)).size > 1)
  const fitted = (pairs: readonly (readonly [number, number])[]) =>
    fitLine(
      pairs.map(([x]) => x),
      pairs.map(([, y]) => y),
    )

  test('a further reading is never surer than the line', () => {
    fc.assert(
      fc.property(points, number(-200, 200), number(0.5, 0.99), (pairs, x, confidence) => {
        const { confidenceInterval, predictionInterval } = predictAt(fitted(pairs), x, confidence)
        expect(predictionInterval.lower).toBeLessThanOrEqual(confidenceInterval.lower)
        expect(predictionInterval.upper).toBeGreaterThanOrEqual(confidenceInterval.upper)
      }),
    )
  })

  test('the prediction reaches a limit no later than the line, and lies on it there', () => {
    fc.assert(
      fc.property(points, number(-300, 300), number(0.6, 0.99), (pairs, limit, confidence) => {
        const fit = fitted(pairs)
        const { byLine, byPrediction } = limitCrossing(fit, { value: limit, side: 'upper' }, confidence)
        if (byLine !== undefined) expect(byPrediction).toBeLessThanOrEqual(byLine * (1 + 1e-9) + 1e-6)
        if (byPrediction === undefined || byPrediction === fit.lastX || byPrediction > 1e4) return
        const { upper } = predictAt(fit, byPrediction, 2 * confidence - 1).predictionInterval
        expect(upper).toBeCloseTo(limit, 4)
      }),
    )
  })
})

describe('comparisons', () => {
  test('an exact p value is a probability, and does not care which outcome counts as success', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.nat(), number(0.02, 0.98), (trials, pick, chance) => {
        const successes = pick % (trials + 1)
        const found = exactBinomialPValue(successes, trials, chance)
        expect(found).toBeGreaterThan(0)
        expect(found).toBeLessThanOrEqual(1)
        expect(exactBinomialPValue(trials - successes, trials, 1 - chance)).toBeCloseTo(found, 9)
      }),
    )
  })

  test('a direction effect does not depend on the order of the classes', () => {
    const seen = fc.tuple(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 30, max: 500 }))
    fc.assert(
      fc.property(seen, seen, ([defectsA, jointsA], [defectsB, jointsB]) => {
        fc.pre(defectsA + defectsB > 0)
        const a = { name: 'along', defects: defectsA, joints: jointsA }
        const b = { name: 'across', defects: defectsB, joints: jointsB }
        expect(directionEffect([a, b])!.pValue).toBeCloseTo(directionEffect([b, a])!.pValue, 9)
        expect(directionEffect([a, b])!.riskRatio).toBeGreaterThanOrEqual(1)
      }),
    )
  })

  test('Pareto order falls, its shares rise to one, and the input order is forgotten', () => {
    const amounts = fc.dictionary(fc.string({ minLength: 1, maxLength: 4 }), fc.integer({ min: 0, max: 99 }))
    fc.assert(
      fc.property(amounts, (amountOf) => {
        const found = new Map(Object.entries(amountOf))
        const rows = paretoOrder(found)
        const reversed = new Map([...found].reverse())
        expect(paretoOrder(reversed)).toEqual(rows)
        rows.slice(1).forEach((row, index) => {
          expect(row.amount).toBeLessThanOrEqual(rows[index]!.amount)
          expect(row.cumulativeShare).toBeGreaterThanOrEqual(rows[index]!.cumulativeShare)
        })
        if (rows.length > 0) expect(rows.at(-1)!.cumulativeShare).toBeCloseTo(1, 12)
      }),
    )
  })
})
