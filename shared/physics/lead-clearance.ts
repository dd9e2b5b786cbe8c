import { normalCdf } from '@/shared/statistics/distributions/normal'
import type { FinishedHole } from './finished-hole'
import type { LeadEnvelope } from './lead-envelope'

export interface Interval {
  readonly leastMm: number
  readonly mostMm: number
}

/** Radial gap between lead and hole wall, three ways of adding the tolerances. */
export interface RadialClearance {
  readonly nominalMm: number
  /** Both at their limits. */
  readonly worstCase: Interval
  /** Tolerances added as the root of the sum of squares. */
  readonly rootSumSquare: Interval
  /** Standard deviation, tolerances taken as `sigmas` standard deviations. */
  readonly standardDeviationMm: number
}

/**
 * The radial clearance of a centred lead: half the difference of the finished
 * hole and the circle the lead needs.
 *
 * Worst case: (hole least − lead most)/2 to (hole most − lead least)/2.
 * Root-sum-square: nominal ± √(hole tolerance² + lead tolerance²)/2.
 * Units: mm, radial. `sigmas` is the number of standard deviations a stated
 * tolerance holds; three unless told.
 */
export function radialClearance(hole: FinishedHole, lead: LeadEnvelope, sigmas = 3): RadialClearance {
  if (!(sigmas > 0)) throw new RangeError('A tolerance holds more than zero standard deviations.')
  const nominalMm = (hole.nominalMm - lead.nominalMm) / 2
  const spreadMm = Math.hypot(hole.toleranceMm, lead.rootSumSquareMm) / 2
  return {
    nominalMm,
    worstCase: { leastMm: (hole.leastMm - lead.mostMm) / 2, mostMm: (hole.mostMm - lead.leastMm) / 2 },
    rootSumSquare: { leastMm: nominalMm - spreadMm, mostMm: nominalMm + spreadMm },
    standardDeviationMm: spreadMm / sigmas,
  }
}

/**
 * The share of joints whose clearance falls below and above a window, hole and
 * lead independent, normal and centred on nominal. Nothing varies: all in or all out.
 */
export function shareOutside(
  { nominalMm, standardDeviationMm }: Pick<RadialClearance, 'nominalMm' | 'standardDeviationMm'>,
  window: Interval,
): { below: number; above: number; outside: number } {
  const below =
    standardDeviationMm > 0
      ? normalCdf((window.leastMm - nominalMm) / standardDeviationMm)
      : Number(nominalMm < window.leastMm)
  const above =
    standardDeviationMm > 0
      ? normalCdf((nominalMm - window.mostMm) / standardDeviationMm)
      : Number(nominalMm > window.mostMm)
  return { below, above, outside: below + above }
}
