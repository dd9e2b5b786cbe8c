import { describe, expect, test } from 'vitest'
import { pointAt } from '@/shared/statistics/charts/chart'
import { chartConstants } from '@/shared/statistics/charts/constants'
import { cumulativeSumChart, designBySigma } from '@/shared/statistics/charts/cumulative-sum'
import { individualsChart } from '@/shared/statistics/charts/individuals'
import { movingRangeChart } from '@/shared/statistics/charts/moving-range'
import { estimateFromMovingRange } from '@/shared/statistics/charts/process-estimate'
import { meanAndDeviation } from '@/shared/statistics/charts/mean-and-deviation'
import { meanAndRange } from '@/shared/statistics/charts/mean-and-range'
import { chartInPhases } from '@/shared/statistics/charts/phases'
import { weightedAverageChart } from '@/shared/statistics/charts/weighted-average'
import reference from '@/tests/reference/statistics/control-charts.json'

describe('individuals and moving range', () => {
  // NIST/SEMATECH e-Handbook 6.3.2.2, flow rates.
  const { inputs, values } = reference.singleReadings

  test('gives the handbook’s limits', () => {
    const individuals = individualsChart(inputs.x)
    const movingRange = movingRangeChart(inputs.x)
    const first = pointAt(individuals, 0)
    expect(first.centre).toBeCloseTo(50.81, 10)
    // The handbook divides by d2 rounded to 1.128; with d2 = 2/√π its 55.8041 is 55.8024.
    const rounded = chartConstants(2).d2 / 1.128
    expect(first.centre + (first.upper - first.centre) * rounded).toBeCloseTo(values.UCL, 4)
    expect(first.centre + (first.lower - first.centre) * rounded).toBeCloseTo(values.LCL, 4)
    expect(first.upper).toBeCloseTo(50.81 + (3 * values.MRbar * Math.sqrt(Math.PI)) / 2, 9)
    expect(pointAt(movingRange, 0).centre).toBeCloseTo(values.MRbar, 10)
    // 6.1347 in the reference uses D4 rounded to 3.267; exact D4 gives 6.1338.
    expect(Math.abs(pointAt(movingRange, 0).upper - values.UCL_MR_D4_3_267)).toBeLessThan(0.001)
    expect([...movingRange.positions]).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9])
    expect(individuals.phases[0]!.limits).toEqual({ kind: 'estimated', pointsUsed: 10, pointsLeftOut: [] })
  })

  test('frozen limits are used as given and say who set them', () => {
    const individuals = individualsChart([1, 2, 9], {
      kind: 'frozen',
      setBy: 'study of March',
      centre: 5,
      processSigma: 2,
    })
    expect(pointAt(individuals, 2)).toMatchObject({ centre: 5, lower: -1, upper: 11 })
    expect(individuals.phases[0]!.limits).toEqual({ kind: 'frozen', setBy: 'study of March' })
  })

  test('a reading left out takes no part in the mean, nor in either moving range beside it', () => {
    const process = estimateFromMovingRange([10, 12, 99, 11, 13], { kind: 'estimated', leaveOut: [2] })
    expect(process.centre).toBe(11.5)
    expect(process.processSigma).toBeCloseTo(Math.sqrt(Math.PI), 11)
  })

  test('equal readings give a chart without width, on which none is out', () => {
    const individuals = individualsChart([0.1, 0.1, 0.1])
    expect(pointAt(individuals, 1)).toMatchObject({ value: 0.1, centre: 0.1, lower: 0.1, upper: 0.1 })
  })

  test.each([[[]], [[1]], [[1, Number.NaN]], [[1, Infinity]]])('%j is no series', (values) => {
    expect(() => individualsChart(values)).toThrow(RangeError)
  })

  test('one reading can be judged against frozen limits', () => {
    const baseline = { kind: 'frozen', setBy: 'study', centre: 0, processSigma: 1 } as const
    const individuals = individualsChart([2], baseline)
    const movingRange = movingRangeChart([2], baseline)
    expect(pointAt(individuals, 0)).toMatchObject({ value: 2, upper: 3 })
    expect([...movingRange.values]).toEqual([])
  })

  test('limits cannot rest on nothing', () => {
    expect(() => individualsChart([1, 2, 3], { kind: 'estimated', leaveOut: [1] })).toThrow(
      'follow one another',
    )
    expect(() => individualsChart([1, 2], { kind: 'estimated', leaveOut: [0, 1] })).toThrow('left out')
    expect(() => individualsChart([1, 2], { kind: 'estimated', to: 3 })).toThrow('2 points')
  })
})

describe('mean and range, mean and standard deviation', () => {
  // Montgomery (1991), piston rings, and ten subgroups of five; limits computed in R.
  const { rows, values } = reference.pistonRings

  test('piston rings by range', () => {
    const { means, spreads, process } = meanAndRange(rows)
    expect(process.centre).toBeCloseTo(values.grand_mean, 9)
    // R divided by d2 rounded to 2.326; the exact factor is 2.325929.
    const rounded = chartConstants(5).d2 / 2.326
    expect(process.processSigma * rounded).toBeCloseTo(values.xbar_R.sigma, 12)
    const width = (pointAt(means, 0).upper - process.centre) * rounded
    expect(process.centre - width).toBeCloseTo(values.xbar_R.LCL, 9)
    expect(process.centre + width).toBeCloseTo(values.xbar_R.UCL, 9)
    expect(pointAt(spreads, 0)).toMatchObject({ lower: 0, centre: expect.closeTo(values.R.CL, 10) as number })
    expect(Math.abs(pointAt(spreads, 0).upper - values.R.UCL)).toBeLessThan(1e-6)
    expect(pointAt(spreads, 0).upper).toBeCloseTo(values.Rbar * 2.1144991450910267, 10)
  })

  test('piston rings by standard deviation', () => {
    const { means, spreads } = meanAndDeviation(rows)
    expect(pointAt(means, 0).lower).toBeCloseTo(values.xbar_S.LCL, 9)
    expect(pointAt(means, 0).upper).toBeCloseTo(values.xbar_S.UCL, 9)
    expect(pointAt(spreads, 0).centre).toBeCloseTo(values.S.CL, 12)
    expect(pointAt(spreads, 0).upper).toBeCloseTo(values.S.UCL, 10)
  })

  test('ten subgroups', () => {
    const ten = reference.tenSubgroups
    const byRange = meanAndRange(ten.rows)
    const byDeviation = meanAndDeviation(ten.rows)
    // Limits by range are R’s with d2 rounded to 2.326, hence the looser comparison.
    expect(Math.abs(pointAt(byRange.means, 0).upper - ten.values.xbar_R.UCL)).toBeLessThan(5e-5)
    expect(Math.abs(pointAt(byRange.spreads, 0).upper - ten.values.R_UCL)).toBeLessThan(1e-4)
    expect(pointAt(byDeviation.means, 0).lower).toBeCloseTo(ten.values.xbar_S.LCL, 8)
    expect(pointAt(byDeviation.spreads, 0).upper).toBeCloseTo(ten.values.S_UCL, 8)
  })

  test('subgroups of unequal size, or of one, are refused', () => {
    expect(() =>
      meanAndRange([
        [1, 2, 3],
        [1, 2],
      ]),
    ).toThrow('Number 2 of the subgroups holds 2')
    expect(() => meanAndRange([[1], [2]])).toThrow(RangeError)
    expect(() => meanAndDeviation([])).toThrow(RangeError)
  })
})

describe('exponentially weighted moving average', () => {
  // NIST/SEMATECH e-Handbook 6.3.2.4.
  const { inputs, values } = reference.weightedAverage
  const baseline = {
    kind: 'frozen',
    setBy: 'history of the process',
    centre: inputs.target,
    processSigma: inputs.s,
  } as const

  test('gives the printed averages', () => {
    const chart = weightedAverageChart(inputs.x, { weight: inputs.lambda, limits: 'steady', baseline })
    chart.values.forEach((value, index) => {
      expect(value).toBeCloseTo(values.ewma[index]!, 10)
      expect(Math.abs(value - values.published_ewma[index]!)).toBeLessThanOrEqual(0.005 + 1e-9)
    })
    expect(Math.abs(pointAt(chart, 0).upper - values.published_UCL)).toBeLessThan(1e-4)
    expect(Math.abs(pointAt(chart, 0).lower - values.published_LCL)).toBeLessThan(1e-4)
    expect(pointAt(chart, 0).upper).toBeCloseTo(values.UCL_steady, 9)
  })

  test('time-varying limits widen to the steady ones', () => {
    const chart = weightedAverageChart(inputs.x, { weight: inputs.lambda, limits: 'time-varying', baseline })
    chart.upper.forEach((limit, index) => expect(limit).toBeCloseTo(values.time_varying_UCL[index]!, 9))
  })

  test('a weight of one is the individuals chart', () => {
    const chart = weightedAverageChart(inputs.x, { weight: 1, limits: 'time-varying' })
    const individuals = individualsChart(inputs.x)
    chart.upper.forEach((limit, index) => expect(limit).toBeCloseTo(individuals.upper[index]!, 10))
    chart.values.forEach((value, index) => expect(value).toBeCloseTo(inputs.x[index]!, 10))
  })

  test.each([0, 1.1, Number.NaN])('a weight of %s is refused', (weight) => {
    expect(() => weightedAverageChart(inputs.x, { weight, limits: 'steady' })).toThrow(RangeError)
  })
})

describe('cumulative sum', () => {
  // NIST/SEMATECH e-Handbook 6.3.2.3.
  const { inputs, values } = reference.cumulativeSum
  const design = { target: inputs.target, allowance: inputs.k, decisionInterval: inputs.h }

  test('gives the handbook’s sums, and signals high at its point 14', () => {
    const chart = cumulativeSumChart(inputs.x, design)
    chart.high.forEach((sum, index) => {
      expect(sum).toBeCloseTo(values.S_hi[index]!, 9)
      expect(Math.abs(sum - values.published_S_hi[index]!)).toBeLessThan(0.01)
    })
    chart.low.forEach((sum, index) => expect(sum).toBeCloseTo(values.S_lo[index]!, 9))
    expect(chart.signals).toHaveLength(1)
    expect(chart.signals[0]).toMatchObject({ side: 'high', soundedAt: 13, startedAt: 12, lastAt: 19 })
    // Target + allowance + sum over the points since zero: 325 + 0.3175 + 4.94 / 2, by hand.
    expect(chart.signals[0]!.estimatedLevel).toBeCloseTo(327.7875, 9)
  })

  test('mirrored readings signal low', () => {
    const mirrored = inputs.x.map((value) => 2 * inputs.target - value)
    expect(cumulativeSumChart(mirrored, design).signals).toMatchObject([{ side: 'low', soundedAt: 13 }])
  })

  test('the usual design: half a sigma of slack, five sigma of interval', () => {
    expect(designBySigma(10, 2)).toEqual({ target: 10, allowance: 1, decisionInterval: 10 })
  })

  test('a chart without a decision interval is refused', () => {
    expect(() => cumulativeSumChart([1], { target: 0, allowance: 0, decisionInterval: 0 })).toThrow(
      RangeError,
    )
  })
})

describe('phases', () => {
  const readings = [1, 2, 1, 2, 101, 102, 101, 102]
  const build = (part: readonly number[]) => individualsChart(part)

  test('each stretch has limits of its own', () => {
    const chart = chartInPhases(
      readings,
      [
        { name: 'old bath', from: 0 },
        { name: 'new bath', from: 4 },
      ],
      build,
    )
    expect([...chart.values]).toEqual(readings)
    expect(pointAt(chart, 3).centre).toBe(1.5)
    expect(pointAt(chart, 4)).toMatchObject({ position: 4, centre: 101.5 })
    expect(chart.phases).toMatchObject([
      { name: 'old bath', from: 0, to: 4 },
      { name: 'new bath', from: 4, to: 8 },
    ])
  })

  test('moving ranges do not span two phases, and keep the index of their reading', () => {
    const chart = chartInPhases(
      readings,
      [
        { name: 'old', from: 0 },
        { name: 'new', from: 4 },
      ],
      (part) => movingRangeChart(part),
    )
    expect([...chart.values]).toEqual([1, 1, 1, 1, 1, 1])
    expect([...chart.positions]).toEqual([1, 2, 3, 5, 6, 7])
    expect(chart.phases).toMatchObject([
      { from: 0, to: 3 },
      { from: 3, to: 6 },
    ])
  })

  test('phases that do not start at the start, or do not rise, are refused', () => {
    expect(() => chartInPhases(readings, [{ name: 'late', from: 1 }], build)).toThrow(RangeError)
    expect(() =>
      chartInPhases(
        readings,
        [
          { name: 'a', from: 0 },
          { name: 'b', from: 8 },
        ],
        build,
      ),
    ).toThrow('“b” holds no reading')
  })

  test('asking for a point that is not there is refused', () => {
    expect(() => pointAt(build([1, 2]), 2)).toThrow(RangeError)
  })
})
