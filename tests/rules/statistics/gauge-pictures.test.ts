import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { gaugeSpreadByRanges } from '@/shared/statistics/gauge/by-ranges'
import { gaugeSpreadByVariance } from '@/shared/statistics/gauge/by-variance'
import { rangesOfStudy } from '@/shared/statistics/gauge/range-chart'
import { sharesOfVariance } from '@/shared/statistics/gauge/shares-of-variance'
import type { GaugeStudy } from '@/shared/statistics/gauge/study'
import reference from '@/tests/reference/statistics/gauge-studies.json'

const tenParts: GaugeStudy = Array.from({ length: 10 }, (_, part) =>
  reference.tenPartsThreeAppraisers.readings.map((trials) => trials.map((trial) => trial[part]!)),
)

describe('the ranges of a study', () => {
  // AIAG, Measurement Systems Analysis, 4th edition, worked example: mean range 0.3417 (read); its limit
  // is printed 0.880 (from memory), with D4 printed 2.574 for three trials.
  test('of the worked example: mean range and its limit', () => {
    const { meanRange, upperLimit } = rangesOfStudy(tenParts)
    expect(meanRange).toBeCloseTo(0.3417, 4)
    expect(upperLimit).toBeCloseTo(0.88, 3)
  })
  test('a range far beyond the others is named by part and person', () => {
    const steady: GaugeStudy = Array.from({ length: 10 }, (_, part) => [
      [part, part + 0.1],
      [part, part + 0.1],
    ])
    expect(rangesOfStudy(steady).beyond).toEqual([])
    const slipped = steady.with(3, [
      [3, 3.1],
      [3, 9],
    ])
    expect(rangesOfStudy(slipped).beyond).toEqual([{ part: 3, appraiser: 1, range: 6 }])
  })
})

describe('shares of the variance', () => {
  const { anova_pooled_no_interaction: pooled } = reference.tenPartsThreeAppraisers.values
  test('of the worked example: the gauge contributes 7.76 % (computed with R)', () => {
    const rows = sharesOfVariance(gaugeSpreadByVariance(tenParts), gaugeSpreadByRanges(tenParts))
    const gauge = rows.find(({ name }) => name === 'Gauge in all')!
    expect(gauge.shares[0]).toBeCloseTo(pooled.percent_contribution_GRR, 5)
    // Published by ranges: 26.7 % of the spread, hence 26.68² ÷ 100 of the variance (26.678, computed).
    expect(gauge.shares[1]).toBeCloseTo(26.678 ** 2 / 100, 2)
  })
  test('repeatability, people, people by part, and parts make the whole, by either way', () => {
    const reading = fc.double({ min: -5, max: 5, noNaN: true })
    const study = fc.array(
      fc.array(fc.array(reading, { minLength: 3, maxLength: 3 }), { minLength: 2, maxLength: 2 }),
      { minLength: 4, maxLength: 4 },
    )
    fc.assert(
      fc.property(study, (crossed) => {
        const byVariance = gaugeSpreadByVariance(crossed)
        fc.pre(byVariance.total > 1e-6)
        const rows = sharesOfVariance(byVariance, gaugeSpreadByRanges(crossed)).slice(0, 4)
        const sum = (way: 0 | 1) => rows.reduce((all, { shares }) => all + (shares[way] ?? 0), 0)
        expect(sum(0)).toBeCloseTo(100, 6)
        expect(sum(1)).toBeCloseTo(100, 6)
      }),
    )
  })
})
