import { differenceInWindow, type WindowShares } from '@/shared/statistics/stack/probability-in-window'
import type { FinishedHole } from './finished-hole'
import type { LeadEnvelope } from './lead-envelope'

export interface Interval {
  readonly minMm: number
  readonly maxMm: number
}

/** Radial gap between lead and hole wall, three ways of adding the tolerances. */
export interface RadialClearance {
  readonly nominalMm: number
  /** Both at their limits. */
  readonly worstCase: Interval
  /** Tolerances added as the root of the sum of squares. */
  readonly rootSumSquare: Interval
}

/**
 * The radial clearance of a centred lead: half the difference of the finished
 * hole and the circle the lead needs.
 *
 * Worst case: (hole least − lead most)/2 to (hole most − lead least)/2.
 * Root-sum-square: nominal ± √(hole tolerance² + lead tolerance²)/2.
 * Units: mm, radial.
 */
export function radialClearance(hole: FinishedHole, lead: LeadEnvelope): RadialClearance {
  const nominalMm = (hole.nominalMm - lead.nominalMm) / 2
  const spreadMm = Math.hypot(hole.toleranceMm, lead.rootSumSquareMm) / 2
  return {
    nominalMm,
    worstCase: { minMm: (hole.minMm - lead.maxMm) / 2, maxMm: (hole.maxMm - lead.minMm) / 2 },
    rootSumSquare: { minMm: nominalMm - spreadMm, maxMm: nominalMm + spreadMm },
  }
}

/**
 * The shares of joints whose radial clearance falls below, within and above a
 * window, hole and lead independent, normal and centred on nominal.
 */
export const clearanceShares = (
  hole: FinishedHole,
  lead: LeadEnvelope,
  window: Interval,
  sigmas = 3,
): WindowShares =>
  differenceInWindow(
    { meanMm: hole.nominalMm, standardDeviationMm: hole.toleranceMm / sigmas },
    { meanMm: lead.nominalMm, standardDeviationMm: lead.rootSumSquareMm / sigmas },
    { minMm: 2 * window.minMm, maxMm: 2 * window.maxMm },
  )

/** The finished hole, least at its smallest and most at its largest, that keeps the radial clearance in a window. */
export const clearanceWindow = (lead: Pick<LeadEnvelope, 'minMm' | 'maxMm'>, radial: Interval): Interval => ({
  minMm: lead.maxMm + 2 * radial.minMm,
  maxMm: lead.minMm + 2 * radial.maxMm,
})
