import type { GoverningRequirement } from '@/shared/plan/requirement'
import type { Source } from '@/shared/sources/source'
import type { SampledMethod } from '@/shared/lot-tests/sampled-methods'

/** What a rule on sampled lots asks, beside what every such rule reads. */
export interface Question {
  readonly method: SampledMethod
  /** The limit one specimen is held to. */
  readonly governing: Pick<GoverningRequirement, 'value'>
  /** Inside the limit by less than this is marginal; in the reading's unit. */
  readonly guardBand: number
  readonly limitMessage: string
  /** Of the limit and the method, beside those of sampling. */
  readonly sources: readonly Source[]
  readonly notes?: readonly string[]
  readonly cautions?: readonly string[]
}

/** Where plans, switching and bounds of sampled lots come from. */
export const SAMPLING_SOURCES: readonly Source[] = [
  { cite: 'MIL-STD-105E tables I to III, 4.7 to 4.9 (ISO 2859-1)', how: 'published' },
  {
    cite: 'Clopper and Pearson, Biometrika 26 (1934); the same with hypergeometric probabilities for the lot',
    how: 'published',
  },
  {
    cite: 'Failed lot: one refinish and one retest, MIL-PRF-22684F 4.5.1.3.1.3',
    how: 'published',
  },
]
