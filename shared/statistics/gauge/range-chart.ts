import { chartConstants } from '@/shared/statistics/charts/constants'
import { mean, range } from '@/shared/statistics/sample-moments'
import { gaugeSize, type GaugeStudy } from './study'

/** The ranges of a study's trials against what a person who repeats steadily would show. */
export interface StudyRanges {
  /** `ranges[part][appraiser]`, in the unit of the gauge. */
  readonly ranges: readonly (readonly number[])[]
  readonly meanRange: number
  /** Greater than this, a range is no chance: the reading, or the person, went astray. */
  readonly upperLimit: number
  readonly beyond: readonly { readonly part: number; readonly appraiser: number; readonly range: number }[]
}

/**
 * The range of every part's trials, person by person, with the limit D4 · R̄ of
 * their mean. Throws RangeError for an incomplete study or more than 25 trials.
 * Source: range chart of a gauge study, AIAG, Measurement Systems Analysis, 4th
 * edition, chapter III (from memory); D4 by its definition.
 */
export function rangesOfStudy(study: GaugeStudy): StudyRanges {
  const { trials } = gaugeSize(study)
  const ranges = study.map((part) => part.map(range))
  const meanRange = mean(ranges.flat())
  const upperLimit = chartConstants(trials).D4 * meanRange
  const beyond = ranges.flatMap((own, part) =>
    own.flatMap((one, appraiser) => (one > upperLimit ? [{ part, appraiser, range: one }] : [])),
  )
  return { ranges, meanRange, upperLimit, beyond }
}
