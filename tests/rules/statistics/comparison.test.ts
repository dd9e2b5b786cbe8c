import { describe, expect, test } from 'vitest'
import { directionEffect } from '@/shared/statistics/comparison/direction-effect'
import { exactBinomialPValue } from '@/shared/statistics/comparison/exact-binomial-test'
import { goodnessOfFit } from '@/shared/statistics/comparison/goodness-of-fit'
import { leadingKinds, paretoOrder } from '@/shared/statistics/comparison/pareto'
import reference from '@/tests/reference/statistics/comparison.json'

describe('exact binomial test', () => {
  // Computed with scipy 1.17.1.
  test.each(reference.exactBinomial.rows)('$successes of $trials at $chance', (row) => {
    expect(exactBinomialPValue(row.successes, row.trials, row.chance)).toBeCloseTo(row.pValue, 10)
  })

  test('five of five at one half, by hand: twice 1/32', () => {
    expect(exactBinomialPValue(5, 5, 0.5)).toBeCloseTo(2 / 32, 12)
  })

  test('more successes than trials are refused', () => {
    expect(() => exactBinomialPValue(6, 5, 0.5)).toThrow(RangeError)
    expect(() => exactBinomialPValue(1, 5, Number.NaN)).toThrow(RangeError)
  })
})

describe('goodness of fit', () => {
  // Computed with scipy 1.17.1; totals of two published soldering experiments.
  test.each(reference.goodnessOfFit.rows)('$observed by $weights', (row) => {
    const found = goodnessOfFit(row.observed, row.weights)
    expect(found.chiSquare / row.chiSquare).toBeCloseTo(1, 10)
    if (row.pValue > 1e-300) expect(found.pValue / row.pValue).toBeCloseTo(1, 8)
    else expect(found.pValue).toBeLessThan(1e-290)
  })

  test('small expectations are said', () => {
    expect(goodnessOfFit([12, 5, 9, 3], [400, 300, 200, 100]).approximationHolds).toBe(false)
    expect(goodnessOfFit([12, 12], [1, 1]).approximationHolds).toBe(true)
  })

  test.each([
    [[1], [1]],
    [[1, 2], [1]],
    [
      [0, 0],
      [1, 1],
    ],
    [
      [1, 2],
      [1, 0],
    ],
  ])('%j by %j is refused', (observed, weights) => {
    expect(() => goodnessOfFit(observed, weights)).toThrow(RangeError)
  })
})

describe('direction effect', () => {
  test('two directions: bridges fall across the travel', () => {
    const found = directionEffect([
      { name: 'along', defects: 3, joints: 5000 },
      { name: 'across', defects: 15, joints: 5000 },
    ])!
    // Exact test of 3 in 18 at one half: 2·(1 + 18 + 153 + 816)/2¹⁸, by hand.
    expect(found.pValue).toBeCloseTo((2 * 988) / 262144, 12)
    expect(found).toMatchObject({ test: 'exact binomial', reliable: true, worst: 'across' })
    expect(found.riskRatio).toBeCloseTo(5, 12)
  })

  test('shares of joints count, not the number of classes', () => {
    const found = directionEffect([
      { name: 'along', defects: 10, joints: 1000 },
      { name: 'across', defects: 30, joints: 3000 },
    ])!
    expect(found.pValue).toBeCloseTo(1, 12)
    expect(found.riskRatio).toBe(1)
  })

  test('four directions by chi-square, with small counts owned up to', () => {
    const found = directionEffect([
      { name: 'leading', defects: 12, joints: 400 },
      { name: 'left', defects: 5, joints: 300 },
      { name: 'right', defects: 9, joints: 200 },
      { name: 'trailing', defects: 3, joints: 100 },
    ])!
    expect(found.pValue).toBeCloseTo(reference.goodnessOfFit.rows[3]!.pValue, 10)
    expect(found).toMatchObject({ test: 'chi-square', reliable: false, worst: 'right' })
  })

  test('all defects in one class', () => {
    const classes = [
      { name: 'a', defects: 4, joints: 100 },
      { name: 'b', defects: 0, joints: 100 },
    ]
    expect(directionEffect(classes)!.riskRatio).toBe(Infinity)
  })

  test('no defect at all says nothing', () => {
    const none = { defects: 0, joints: 100 }
    expect(
      directionEffect([
        { name: 'a', ...none },
        { name: 'b', ...none },
      ]),
    ).toBeUndefined()
  })

  test('classes without joints, or one class alone, are refused', () => {
    const seen = { name: 'a', defects: 1, joints: 10 }
    expect(() => directionEffect([seen])).toThrow(RangeError)
    expect(() => directionEffect([seen, { name: 'b', defects: 0, joints: 0 }])).toThrow('“b”')
  })
})

describe('Pareto order', () => {
  test('falls, runs up to one, and breaks ties by name', () => {
    const rows = paretoOrder(new Map(Object.entries({ void: 2, bridge: 6, skip: 10, icicle: 2 })))
    expect(rows.map(({ kind }) => kind)).toEqual(['skip', 'bridge', 'icicle', 'void'])
    expect(rows.map(({ cumulativeShare }) => cumulativeShare)).toEqual([0.5, 0.8, 0.9, 1])
    expect(leadingKinds(rows, 0.8).map(({ kind }) => kind)).toEqual(['skip', 'bridge'])
  })

  test('nothing found gives no rows; a negative amount is refused', () => {
    expect(paretoOrder(new Map(Object.entries({ bridge: 0 })))).toEqual([])
    expect(leadingKinds([], 0.8)).toEqual([])
    expect(() => paretoOrder(new Map(Object.entries({ bridge: -1 })))).toThrow('“bridge”')
  })
})
