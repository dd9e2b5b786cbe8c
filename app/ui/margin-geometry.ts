import type { Margin } from '@/shared/rules/finding'

/** Where the parts of a margin bar lie, as shares of its width: 0 at the left, 1 at the right. */
export type MarginGeometry = {
  limit: number
  found: number
  /** End of the guard band inside the limit. */
  guard: number
  /** The found value lies beyond the drawn range and is held at its edge. */
  clipped: boolean
}

/** Share of the bar at which the limit stands; the rest lies beyond it. */
export const LIMIT_AT = 0.72

/**
 * Lays out a margin bar with the allowed side always at the left, so that all
 * bars of a page read alike whichever way their limits face. The allowed side
 * spans the limit's own size (down to zero for an "at most"), or four guard
 * bands where the limit is zero; a value further in or out is held at the edge.
 */
export function marginGeometry({ found, limit, direction, guardBand }: Margin): MarginGeometry {
  if (!Number.isFinite(found) || !Number.isFinite(limit)) {
    throw new RangeError('A margin bar needs a finite found value and limit.')
  }
  const span = Math.abs(limit) || 4 * guardBand || Math.abs(found) || 1
  const marginValue = direction === 'at most' ? limit - found : found - limit
  const placed = LIMIT_AT - (marginValue / span) * LIMIT_AT
  return {
    limit: LIMIT_AT,
    found: Math.min(1, Math.max(0, placed)),
    guard: Math.max(0, LIMIT_AT - (guardBand / span) * LIMIT_AT),
    clipped: placed < 0 || placed > 1,
  }
}
