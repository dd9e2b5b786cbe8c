import { requireEqualRows } from '@/shared/statistics/reading-checks'

/**
 * Readings of a gauge study, `readings[part][appraiser][trial]`, every cell of
 * the same number of trials, in the unit of the gauge.
 */
export type GaugeStudy = readonly (readonly (readonly number[])[])[]

export type GaugeSize = { parts: number; appraisers: number; trials: number }

/** Where the spread of a study comes from, as standard deviations in the unit of the gauge. */
export type GaugeSpread = {
  /** The same person, the same part again (EV). */
  repeatability: number
  /** Between persons, with what each does differently from part to part where it is counted (AV). */
  reproducibility: number
  /** Both together (GRR). */
  gauge: number
  /** Between parts (PV). */
  parts: number
  total: number
}

/** Size of a crossed study. Throws RangeError unless it has 2 parts, 2 appraisers and 2 trials, none missing. */
export function gaugeSize(study: GaugeStudy): GaugeSize {
  const [first] = study
  if (first === undefined || study.length < 2) throw new RangeError('A gauge study needs at least two parts.')
  if (first.length < 2) throw new RangeError('A gauge study needs at least two appraisers.')
  study.forEach((part, index) => {
    requireEqualRows(part, `cells of part ${index + 1}`, 2)
    if (part.length !== first.length || part[0]!.length !== first[0]!.length)
      throw new RangeError(
        `Part ${index + 1} was not measured as part 1 was: ${part.length} appraisers with ` +
          `${part[0]!.length} trials, against ${first.length} with ${first[0]!.length}.`,
      )
  })
  return { parts: study.length, appraisers: first.length, trials: first[0]!.length }
}
