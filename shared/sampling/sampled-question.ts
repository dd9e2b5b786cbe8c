import type { GoverningRequirement } from '@/shared/plan/requirement'
import type { Source } from '@/shared/sources/source'
import type { SampledMethod } from './sampled-method'

/** What a rule on sampled lots asks, beside what every such rule reads. */
export interface Question {
  readonly method: SampledMethod
  /** The limit one specimen is held to. */
  readonly governing: Pick<GoverningRequirement, 'value'>
  /** Inside the limit by less than this is marginal; in the reading's unit. */
  readonly guardBand: number
  readonly limitMessage: string
  readonly sources: readonly Source[]
  readonly notes?: readonly string[]
  readonly cautions?: readonly string[]
}
