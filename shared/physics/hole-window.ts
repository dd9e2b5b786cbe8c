import { HOLE_ALLOWANCES, type ProducibilityLevel } from '@/shared/materials/hole-allowances'

export interface HoleWindow {
  /** The least the finished hole may measure at its smallest. */
  readonly minMm: number
  /** The most the finished hole may measure at its largest. */
  readonly maxMm: number
  /** The window is empty when the lead itself varies by more than the allowances differ. */
  readonly feasible: boolean
}

/**
 * Finished-hole limits for a lead by producibility level: from the largest lead
 * plus the least allowance to the smallest lead plus the most allowance.
 * An empty window is reported as such; its bounds are never swapped.
 *
 * Units: mm, diameters. Source: IPC-2222A/B, Table 9-5.
 */
export function holeWindow(
  lead: { readonly minMm: number; readonly maxMm: number },
  level: ProducibilityLevel,
): HoleWindow {
  if (!(lead.minMm > 0 && lead.maxMm >= lead.minMm)) {
    throw new RangeError('A lead has a least size above zero and a most size not below it.')
  }
  const { minOverMaxMm, maxOverMinMm } = HOLE_ALLOWANCES[level]
  const minMm = lead.maxMm + minOverMaxMm
  const maxMm = lead.minMm + maxOverMinMm
  return { minMm, maxMm, feasible: minMm <= maxMm }
}
