import { describe, expect, test } from 'vitest'
import { differenceInWindow } from '@/shared/statistics/stack/probability-in-window'
import { rootSumSquareGap } from '@/shared/statistics/stack/root-sum-square'
import type { StackedDimension } from '@/shared/statistics/stack/stacked-dimension'
import { worstCaseGap } from '@/shared/statistics/stack/worst-case'
import reference from '@/tests/reference/statistics/stack.json'

// Constructed example, computed with scipy: 25 + 10 − 34.5 with tolerances .10, .05, .15.
describe('a stack of three', () => {
  const { values } = reference.stack
  const stack: StackedDimension[] = [
    { nominalMm: 25, toleranceMm: 0.1, direction: 1 },
    { nominalMm: 10, toleranceMm: 0.05, direction: 1 },
    { nominalMm: 34.5, toleranceMm: 0.15, direction: -1 },
  ]
  test('worst case', () => {
    const gap = worstCaseGap(stack)
    expect(gap.nominalMm).toBeCloseTo(values.gap, 12)
    expect(gap.minMm).toBeCloseTo(values.gap_min_wc, 12)
    expect(gap.maxMm).toBeCloseTo(values.gap_max_wc, 12)
  })
  test('root sum square, plain and inflated by 1.5', () => {
    expect(rootSumSquareGap(stack).maxMm - values.gap).toBeCloseTo(values.rss, 12)
    expect(rootSumSquareGap(stack, 1.5).maxMm - values.gap).toBeCloseTo(values['rss_inflated_1.5'], 12)
  })
  test('at three standard deviations a tolerance, a gap under 0.3 mm has the computed probability', () => {
    const standardDeviationMm = values.rss / 3
    expect(standardDeviationMm).toBeCloseTo(values.sigma_if_tol_3s, 12)
    const shares = differenceInWindow(
      { meanMm: values.gap, standardDeviationMm },
      { meanMm: 0, standardDeviationMm: 0 },
      { minMm: 0.3 },
    )
    expect(shares.below).toBeCloseTo(values['P_gap_below_0.3'], 14)
    expect(shares.above).toBe(0)
  })
  test.each([
    ['an empty stack', []],
    ['a negative tolerance', [{ nominalMm: 1, toleranceMm: -0.1, direction: 1 as const }]],
    ['a NaN tolerance', [{ nominalMm: 1, toleranceMm: NaN, direction: 1 as const }]],
    ['a nominal that is no number', [{ nominalMm: NaN, toleranceMm: 0.1, direction: 1 as const }]],
  ])('%s is refused', (_, dimensions) => {
    expect(() => worstCaseGap(dimensions)).toThrow(RangeError)
    expect(() => rootSumSquareGap(dimensions)).toThrow(RangeError)
  })
  test('an inflation below 1 is refused', () => {
    expect(() => rootSumSquareGap(stack, 0.9)).toThrow('1 or more')
  })
})

// Difference of independent normal variables, computed with scipy.
describe('the clearance of hole and lead', () => {
  test.each(reference.windows.rows)('hole $hole_mean, lead $lead_mean, window $a to $b', (row) => {
    const shares = differenceInWindow(
      { meanMm: row.hole_mean, standardDeviationMm: row.hole_sd },
      { meanMm: row.lead_mean, standardDeviationMm: row.lead_sd },
      { minMm: row.a, maxMm: row.b ?? undefined },
    )
    expect(shares.within).toBeCloseTo(row.P_in, 13)
    expect(shares.below).toBeCloseTo(row.P_below_a, 13)
    expect(shares.above).toBeCloseTo(row.P_above_b, 13)
    expect(shares.below + shares.within + shares.above).toBeCloseTo(1, 13)
  })
  test('without scatter it is inside or not; an end counts as inside', () => {
    const hole = { meanMm: 1, standardDeviationMm: 0 }
    const lead = { meanMm: 0.75, standardDeviationMm: 0 }
    expect(differenceInWindow(hole, lead, { minMm: 0.25, maxMm: 0.5 }).within).toBe(1)
    expect(differenceInWindow(hole, lead, { minMm: 0.3, maxMm: 0.5 }).below).toBe(1)
    expect(differenceInWindow(hole, lead, { maxMm: 0.2 }).above).toBe(1)
  })
  test.each([
    ['an empty window', 1, 0.01, { minMm: 0.3, maxMm: 0.1 }],
    ['a NaN end', 1, 0.01, { minMm: NaN }],
    ['a NaN mean', NaN, 0.01, {}],
    ['a negative standard deviation', 1, -0.01, {}],
  ])('%s is refused', (_, meanMm, standardDeviationMm, window) => {
    const lead = { meanMm: 0.8, standardDeviationMm: 0.01 }
    expect(() => differenceInWindow({ meanMm, standardDeviationMm }, lead, window)).toThrow(RangeError)
  })
})
