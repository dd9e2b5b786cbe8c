import { describe, expect, test } from 'vitest'
import { pointAt } from '@/shared/statistics/charts/chart'
import type { Chart } from '@/shared/statistics/charts/chart'
import { countDefectiveChart } from '@/shared/statistics/charts/count-defective'
import { defectCountChart } from '@/shared/statistics/charts/defect-count'
import { defectsPerUnitChart } from '@/shared/statistics/charts/defects-per-unit'
import { proportionDefectiveChart } from '@/shared/statistics/charts/proportion-defective'
import reference from '@/tests/reference/statistics/control-charts.json'

/** Points outside, counted from 1 as the sources count them. */
const outside = (chart: Chart): number[] =>
  [...chart.values].flatMap((value, index) =>
    value > chart.upper[index]! || value < chart.lower[index]! ? [index + 1] : [],
  )

describe('defect count (c)', () => {
  // Montgomery (1991), pp. 173–175; limits computed in R.
  test('printed boards: limits, and samples 6 and 20 outside', () => {
    const { counts, values } = reference.circuitBoards
    const chart = defectCountChart(counts)
    expect(pointAt(chart, 0).centre).toBeCloseTo(values.cbar26, 10)
    expect(pointAt(chart, 0).upper).toBeCloseTo(values.UCL26, 9)
    expect(pointAt(chart, 0).lower).toBeCloseTo(values.LCL26, 9)
    expect(outside(chart)).toEqual(values.out_of_limits_1based)
  })

  test('printed boards without those two samples', () => {
    const { counts, values } = reference.circuitBoards
    const chart = defectCountChart(counts, { kind: 'estimated', leaveOut: [5, 19] })
    expect(pointAt(chart, 0).centre).toBeCloseTo(values.cbar24, 10)
    expect(pointAt(chart, 0).upper).toBeCloseTo(values.UCL24, 9)
    expect(chart.phases[0]!.limits).toEqual({ kind: 'estimated', pointsUsed: 24, pointsLeftOut: [5, 19] })
  })

  // K. Ishikawa, Guide to Quality Control, c chart (data read in a public file; limits computed in R).
  test('twenty samples: no lower limit, the last one beyond the upper', () => {
    const chart = defectCountChart([6, 5, 3, 5, 3, 8, 3, 5, 4, 3, 6, 4, 6, 6, 6, 5, 7, 6, 9, 13])
    expect(pointAt(chart, 0)).toMatchObject({ centre: 5.65, lower: 0 })
    expect(pointAt(chart, 0).upper).toBeCloseTo(12.7809185944028, 10)
    expect(outside(chart)).toEqual([20])
  })

  // NIST/SEMATECH e-Handbook 6.3.3.1: 16, 28 and 4; wafer 3 lies on the limit, wafer 24 beyond it.
  test('wafers: a count on the limit is not beyond it', () => {
    const { counts, values } = reference.waferDefects
    const chart = defectCountChart(counts)
    expect(pointAt(chart, 2)).toMatchObject({ value: 28, centre: 16, upper: 28, lower: 4 })
    expect(outside(chart)).toEqual(values.beyond_1based)
  })

  test('a lower limit below zero is drawn at zero', () => {
    expect(pointAt(defectCountChart([1, 2, 3]), 0).lower).toBe(0)
  })

  test.each([[[]], [[-1]], [[1.5]], [[Number.NaN]]])('%j are no counts', (counts) => {
    expect(() => defectCountChart(counts)).toThrow(RangeError)
  })
})

describe('proportion and number of defectives (p, np)', () => {
  // NIST/SEMATECH e-Handbook 6.3.3.2; limits computed in R.
  const { counts, size, values, countChart } = reference.defectiveFraction

  test('thirty samples of fifty', () => {
    const chart = proportionDefectiveChart(counts, size)
    expect(pointAt(chart, 0).centre).toBeCloseTo(values.pbar, 12)
    expect(pointAt(chart, 0).upper).toBeCloseTo(values.UCL, 12)
    expect(pointAt(chart, 0).lower).toBeCloseTo(values.LCL, 12)
    expect(outside(chart)).toEqual(values.beyond_1based)
  })

  test('the same as counts', () => {
    const chart = countDefectiveChart(counts, size)
    expect(pointAt(chart, 0).centre).toBeCloseTo(countChart.center, 10)
    expect(pointAt(chart, 0).upper).toBeCloseTo(countChart.UCL, 10)
    expect(pointAt(chart, 0).lower).toBeCloseTo(countChart.LCL, 10)
    expect(outside(chart)).toEqual(values.beyond_1based)
  })

  test('samples of unequal size have limits of their own', () => {
    const { inputs, values: expected } = reference.unequalSamples
    const chart = proportionDefectiveChart(inputs.d, inputs.n)
    expected.limits.forEach(([lower, upper], index) => {
      expect(chart.lower[index]).toBeCloseTo(lower!, 12)
      expect(chart.upper[index]).toBeCloseTo(upper!, 12)
    })
    expect(outside(chart)).toEqual(expected.beyond_1based)
  })

  test('a frozen level is held', () => {
    const chart = proportionDefectiveChart([1, 2], 100, { kind: 'frozen', setBy: 'order', centre: 0.1 })
    expect(pointAt(chart, 0)).toMatchObject({ centre: 0.1, upper: expect.closeTo(0.19, 12) as number })
  })

  test('more defectives than pieces, or sizes that do not match, are refused', () => {
    expect(() => proportionDefectiveChart([51], 50)).toThrow('cannot exceed the pieces inspected (50)')
    expect(() => proportionDefectiveChart([1], [50, 50])).toThrow('1 counts but 2 sample sizes')
    expect(() => proportionDefectiveChart([0], 0)).toThrow(RangeError)
    expect(() => proportionDefectiveChart([0], 9, { kind: 'frozen', setBy: 'x', centre: 2 })).toThrow(
      RangeError,
    )
    expect(() => countDefectiveChart([0], 9, { kind: 'frozen', setBy: 'x', centre: 10 })).toThrow(RangeError)
  })
})

describe('defects per unit (u)', () => {
  test('Ishikawa’s areas: the limit follows the size', () => {
    const { inputs, values } = reference.unequalAreas
    const chart = defectsPerUnitChart(inputs.defects, inputs.size)
    expect(pointAt(chart, 0).centre).toBeCloseTo(values.ubar, 12)
    inputs.size.forEach((size, index) => {
      const limit = values.UCL_by_size[String(size) as keyof typeof values.UCL_by_size]
      expect(chart.upper[index]).toBeCloseTo(limit, 10)
      expect(chart.lower[index]).toBe(0)
    })
  })

  test('dyed cloth', () => {
    const { inputs, values } = reference.dyedCloth
    const chart = defectsPerUnitChart(inputs.defects, inputs.size)
    values.limits_first3.forEach(([lower, upper], index) => {
      expect(chart.lower[index]).toBeCloseTo(lower!, 10)
      expect(chart.upper[index]).toBeCloseTo(upper!, 10)
    })
  })

  test('an empty sample is refused', () => {
    expect(() => defectsPerUnitChart([1], 0)).toThrow(RangeError)
  })
})
