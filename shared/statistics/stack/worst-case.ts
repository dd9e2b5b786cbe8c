import { nominalGapMm, type StackedDimension, type StackedGap } from './stacked-dimension'

/**
 * The gap with every dimension at its worst together: no part within tolerance can exceed it.
 *
 * Units: millimetres. Errors: RangeError for an empty stack, a nominal that is no number or a
 * negative tolerance. Source: definition; arithmetic of tolerances.
 */
export function worstCaseGap(dimensions: readonly StackedDimension[]): StackedGap {
  const nominalMm = nominalGapMm(dimensions)
  const reachMm = dimensions.reduce((sum, { toleranceMm }) => sum + toleranceMm, 0)
  return { nominalMm, minMm: nominalMm - reachMm, maxMm: nominalMm + reachMm }
}
