import { requirePositive, requireProbability } from '@/shared/statistics/argument-checks'

export interface InspectionChoice {
  readonly inspect: 'all' | 'none' | 'either'
  /** Share of defectives at which both cost the same. */
  readonly breakEven: number
}

/**
 * Whether inspecting every piece or none costs less, for a steady share of
 * defectives: all above k1/k2, none below, where k1 is the cost to inspect one
 * piece and k2 that of a defective let through. It knows nothing of safety,
 * where cost does not decide. Source: W. E. Deming, Out of the Crisis, chapter 15 (from memory).
 */
export function inspectAllOrNone(
  shareDefective: number,
  { costToInspect, costIfLetThrough }: { costToInspect: number; costIfLetThrough: number },
): InspectionChoice {
  requireProbability(shareDefective, 'share of defectives')
  requirePositive(costToInspect, 'cost to inspect a piece')
  requirePositive(costIfLetThrough, 'cost of a defective let through')
  const breakEven = costToInspect / costIfLetThrough
  if (shareDefective === breakEven) return { inspect: 'either', breakEven }
  return { inspect: shareDefective > breakEven ? 'all' : 'none', breakEven }
}
