import { fromMemory, published } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'
import { guard } from './guard-bands'

/** How near to its limit a result of the evaluation counts as only just good. */

export const resultAgeGuard = guard(
  'result-age',
  'Result about to be too old: share of the age allowed',
  25,
  'In the last quarter of its time a lot in store is tested again or soldered: a new test takes weeks',
)
export const wettingTimeGuard = guard(
  'wetting-time',
  'Only just wetted in time: share of the time allowed',
  10,
  'A tenth of the limit is about the step from one dip to the next longer',
)
export const coverageGuard = guard(
  'dip-coverage',
  'Only just covered: percentage points above the least',
  1,
  'Two observers seldom agree to better than one hundredth of the dipped area',
)
export const samplingRiskGuard = guard(
  'sampling-risk',
  'Plan only just sharp enough: share of the limiting quality',
  10,
  'A plan within a tenth of the limiting quality is changed when the lot size changes',
)
export const variablesGuard = guard(
  'variables-index',
  'Variables sample only just accepted: share of the acceptability constant',
  10,
  'A quality index within a tenth of its constant turns on the next reading',
)
export const wettingBalanceGuard = guard(
  'wetting-balance',
  'Curve only just inside an agreed criterion: share of it',
  10,
  'Times and forces of one lead are read again within about a tenth',
)
export const platingGuard = guard(
  'plating',
  'Thickness only just shown, where no uncertainty is stated: share of the limit',
  5,
  'A twentieth of the thickness stands in for the uncertainty of a gauge that states none',
)

/** Between this and the most allowed a gauge is used with care. */
export const gaugeShareGood = limit({
  key: 'gauge-share-good',
  label: 'Repeatability and reproducibility of a good gauge, share of the study’s variation',
  unit: '%',
  direction: 'at most',
  byDefault: {
    value: 10,
    authority: 'common practice',
    from: fromMemory(
      'Measurement Systems Analysis, 4th edition (AIAG): under 10 % good, 10 to 30 % usable by application',
    ),
  },
})

/** Copper on a hole wall thinner than this share of its least is taken as missing. */
export const voidShareMin = limit({
  key: 'hole-copper-void-share',
  label: 'Copper on a hole wall that is no void yet: share of its least',
  unit: '%',
  direction: 'at least',
  byDefault: {
    value: 80,
    authority: 'standard',
    from: published(
      'MIL-PRF-31032/1B 3.6.4.1: copper under 80 % of the specified thickness counts as a void',
    ),
  },
})
