import type { GaugeSpreadByVariance } from './by-variance'
import type { GaugeSpread } from './study'

/** One source of variance with its share of the whole by either computation, in percent. */
export interface VarianceShare {
  readonly name: string
  /** By analysis of variance, by averages and ranges; undefined where one does not see the source. */
  readonly shares: readonly [number | undefined, number | undefined]
}

/**
 * What each source contributes to the variance of a study. Variances add up, so
 * the first four shares of either way make 100 %; the gauge is the first three together.
 * Source: AIAG, Measurement Systems Analysis, 4th edition, chapter III (contribution to variance).
 */
export function sharesOfVariance(
  byVariance: GaugeSpreadByVariance,
  byRanges: GaugeSpread | undefined,
): VarianceShare[] {
  const people = Math.sqrt(Math.max(0, byVariance.reproducibility ** 2 - byVariance.interaction ** 2))
  const share = (spread: number, total: number) => (100 * spread ** 2) / total ** 2
  const row = (name: string, one: number, other: number | undefined): VarianceShare => ({
    name,
    shares: [
      share(one, byVariance.total),
      other === undefined || !byRanges || !(byRanges.total > 0) ? undefined : share(other, byRanges.total),
    ],
  })
  return [
    row('Repeatability', byVariance.repeatability, byRanges?.repeatability),
    row('People', people, byRanges?.reproducibility),
    row('People by part', byVariance.interaction, undefined),
    row('Parts', byVariance.parts, byRanges?.parts),
    row('Gauge in all', byVariance.gauge, byRanges?.gauge),
  ]
}
