import { describe, expect, test } from 'vitest'
import { gaugeSpreadByRanges, singleRangeFactor } from '@/shared/statistics/gauge/by-ranges'
import { gaugeSpreadByVariance } from '@/shared/statistics/gauge/by-variance'
import type { GaugeStudy } from '@/shared/statistics/gauge/study'
import { gaugeFigures } from '@/shared/statistics/gauge/verdict-figures'
import reference from '@/tests/reference/statistics/gauge-studies.json'

/** Cuts a flat list in part, operator, trial order. */
const cut = (readings: readonly number[], operators: number, trials: number): GaugeStudy =>
  Array.from({ length: readings.length / operators / trials }, (_, part) =>
    Array.from({ length: operators }, (_, operator) => {
      const start = (part * operators + operator) * trials
      return readings.slice(start, start + trials)
    }),
  )

const tenParts: GaugeStudy = Array.from({ length: 10 }, (_, part) =>
  reference.tenPartsThreeAppraisers.readings.map((trials) => trials.map((trial) => trial[part]!)),
)
const thermalImpedance = cut(reference.thermalImpedance.readings, 3, 3)
const gasket = cut(reference.gasket.readings, 3, 2)
const flightTime: GaugeStudy = [0, 1, 2].map((prototype) =>
  [0, 1, 2].map((operator) => {
    const start = (operator * 3 + prototype) * 3
    return reference.flightTime.readings.slice(start, start + 3)
  }),
)

describe('by averages and ranges', () => {
  // AIAG, Measurement Systems Analysis, 4th edition, worked example (read).
  test('ten parts, three appraisers: the published spreads, 26.7 % and 5 categories', () => {
    const { published } = reference.tenPartsThreeAppraisers
    const found = gaugeSpreadByRanges(tenParts)
    expect(found.repeatability).toBeCloseTo(published.range_method.EV, 4)
    expect(found.reproducibility).toBeCloseTo(published.range_method.AV, 4)
    expect(found.gauge).toBeCloseTo(published.range_method.GRR, 4)
    // The manual rounds K3 to 0.3146; the exact 0.31456 gives 1.10446 against its printed 1.1046.
    expect(Math.abs(found.parts - published.range_method.PV)).toBeLessThan(2e-4)
    expect(Math.abs(found.total - published.range_method.TV)).toBeLessThan(2e-4)
    const figures = gaugeFigures(found)
    expect(figures.gaugeShareOfTotalPct).toBeCloseTo(published.range_method.GRR_percent, 1)
    expect(figures.distinctCategories).toBe(published.range_method.ndc)
  })

  test('gasket, two trials', () => {
    const expected = reference.gasket.values.average_range
    const found = gaugeSpreadByRanges(gasket)
    expect(found.repeatability).toBeCloseTo(expected.EV, 5)
    expect(found.reproducibility).toBeCloseTo(expected.AV, 5)
    expect(Math.abs(found.parts - expected.PV)).toBeLessThan(3e-5)
    expect(gaugeFigures(found).gaugeShareOfTotalPct).toBeCloseTo(expected.percent_GRR, 1)
  })

  // The manual's printed constants, read: K1 for 2 and 3 trials, K2 for 3 appraisers, K3 for 10 parts.
  test('the computed constants round to the printed ones', () => {
    expect(1 / singleRangeFactor(2)).toBeCloseTo(0.7071, 4)
    expect(1 / singleRangeFactor(3)).toBeCloseTo(0.5231, 4)
    expect(1 / singleRangeFactor(10)).toBeCloseTo(0.3146, 4)
  })
})

describe('by analysis of variance', () => {
  test('ten parts: the table', () => {
    const { table, interactionPValue } = gaugeSpreadByVariance(tenParts)
    const { anova } = reference.tenPartsThreeAppraisers.values
    expect(table.parts.sumOfSquares).toBeCloseTo(anova.part.SS, 9)
    expect(table.appraisers.sumOfSquares).toBeCloseTo(anova.appraiser.SS, 9)
    expect(table.interaction.sumOfSquares).toBeCloseTo(anova.interaction.SS, 9)
    expect(table.trials.sumOfSquares).toBeCloseTo(anova.repeat.SS, 9)
    expect(table.interaction.degreesOfFreedom).toBe(18)
    expect(table.trials.degreesOfFreedom).toBe(60)
    expect(interactionPValue).toBeCloseTo(anova.p_interaction, 9)
  })

  test('ten parts: no interaction, so it is pooled; 27.86 %', () => {
    const found = gaugeSpreadByVariance(tenParts)
    const { sd, percent_study, percent_contribution_GRR } =
      reference.tenPartsThreeAppraisers.values.anova_pooled_no_interaction
    expect(found.branch).toBe('pooled')
    expect(found.interaction).toBe(0)
    expect(found.repeatability).toBeCloseTo(sd.EV, 9)
    expect(found.reproducibility).toBeCloseTo(sd.AV, 9)
    expect(found.gauge).toBeCloseTo(sd.GRR, 9)
    expect(found.parts).toBeCloseTo(sd.PV, 9)
    expect(found.total).toBeCloseTo(sd.TV, 9)
    // Published, from memory: 0.199933, 0.226838, 0.302373, 1.042327.
    expect(Math.abs(found.gauge - 0.302373)).toBeLessThan(2e-6)
    const figures = gaugeFigures(found)
    expect(figures.gaugeShareOfTotalPct).toBeCloseTo(percent_study.GRR, 5)
    expect(figures.gaugeShareOfVariancePct).toBeCloseTo(percent_contribution_GRR, 6)
    expect(figures.distinctCategoriesUncut).toBeCloseTo(4.86051647662, 8)
    expect(figures.distinctCategories).toBe(4)
  })

  test('ten parts, forced to keep the interaction: its negative component counts as zero; 28.75 %', () => {
    const found = gaugeSpreadByVariance(tenParts, { branch: 'with-interaction' })
    const expected = reference.tenPartsThreeAppraisers.values.anova_with_interaction_clamped
    expect(found.interaction).toBe(0)
    expect(found.gauge).toBeCloseTo(expected.sd.GRR, 9)
    expect(found.parts).toBeCloseTo(expected.sd.PV, 9)
    expect(gaugeFigures(found).gaugeShareOfTotalPct).toBeCloseTo(expected.percent_study_GRR, 5)
  })

  // Houf and Berman 1988; mean squares also published by Burdick, Borror and Montgomery 2003 (from memory).
  test('a study with a real interaction keeps it', () => {
    const found = gaugeSpreadByVariance(thermalImpedance)
    const { values } = reference.thermalImpedance
    expect(found.branch).toBe('with-interaction')
    expect(found.interactionPValue / values.anova.p_interaction).toBeCloseTo(1, 8)
    expect(found.table.parts.meanSquare).toBeCloseTo(437.33, 2)
    expect(found.repeatability ** 2).toBeCloseTo(values.var.repeatability, 9)
    expect(found.interaction ** 2).toBeCloseTo(values.var.interaction, 9)
    expect(found.reproducibility ** 2).toBeCloseTo(values.var.reproducibility, 9)
    expect(found.parts ** 2).toBeCloseTo(values.var.part, 9)
    const figures = gaugeFigures(found, 58 - 18)
    expect(figures.gaugeShareOfTotalPct).toBeCloseTo(values.percent_study_GRR, 5)
    expect(figures.gaugeShareOfTolerancePct! / 100).toBeCloseTo(values.PTR_6sigma, 9)
    expect(figures.distinctCategoriesUncut).toBeCloseTo(values['ndc_raw_1.41'], 8)
  })

  test('gasket and flight times', () => {
    const ofGasket = gaugeSpreadByVariance(gasket)
    expect(ofGasket.branch).toBe('with-interaction')
    expect(ofGasket.gauge ** 2).toBeCloseTo(reference.gasket.values.var.GRR, 9)
    expect(ofGasket.parts ** 2).toBeCloseTo(reference.gasket.values.var.part, 9)
    const ofFlight = gaugeSpreadByVariance(flightTime)
    expect(ofFlight.branch).toBe('pooled')
    expect(ofFlight.gauge ** 2).toBeCloseTo(reference.flightTime.values.var_pooled.GRR, 9)
    expect(gaugeFigures(ofFlight).gaugeShareOfTotalPct).toBeCloseTo(
      reference.flightTime.values.percent_study_GRR_pooled,
      5,
    )
  })
})

describe('edges', () => {
  test('a gauge that repeats exactly tells any number of parts apart', () => {
    const perfect = [
      [
        [1, 1],
        [1, 1],
      ],
      [
        [2, 2],
        [2, 2],
      ],
    ]
    const found = gaugeSpreadByVariance(perfect)
    expect(found.gauge).toBe(0)
    expect(gaugeFigures(found).distinctCategories).toBe(Infinity)
  })

  test.each([
    [
      'one part',
      [
        [
          [1, 2],
          [1, 2],
        ],
      ],
    ],
    ['one appraiser', [[[1, 2]], [[1, 2]]]],
    [
      'one trial',
      [
        [[1], [1]],
        [[2], [2]],
      ],
    ],
    [
      'a missing trial',
      [
        [
          [1, 2],
          [1, 2],
        ],
        [[1, 2], [1]],
      ],
    ],
    [
      'a missing appraiser',
      [
        [
          [1, 2],
          [1, 2],
        ],
        [[1, 2]],
      ],
    ],
    [
      'an absent reading',
      [
        [
          [1, 2],
          [1, Number.NaN],
        ],
        [
          [1, 2],
          [1, 2],
        ],
      ],
    ],
  ])('%s is no study', (_, study) => {
    expect(() => gaugeSpreadByRanges(study)).toThrow(RangeError)
    expect(() => gaugeSpreadByVariance(study)).toThrow(RangeError)
  })

  test('readings that are all equal cannot be judged', () => {
    const flat = [
      [
        [1, 1],
        [1, 1],
      ],
      [
        [1, 1],
        [1, 1],
      ],
    ]
    expect(() => gaugeFigures(gaugeSpreadByRanges(flat))).toThrow(RangeError)
  })
})
