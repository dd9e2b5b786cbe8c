import { nominalGapMm, type StackedDimension, type StackedGap } from './stacked-dimension'

/**
 * The gap with tolerances added as independent deviations: if every tolerance stands for the same
 * number of standard deviations and every dimension is centred, so does the result.
 *
 * Units: millimetres; the inflation (1 or more, for dimensions that wander off centre) has none.
 * Errors: as for the worst case; RangeError for an inflation below 1.
 * Source: propagation of independent variances; the inflation is common practice, no published source.
 */
export function rootSumSquareGap(dimensions: readonly StackedDimension[], inflation = 1): StackedGap {
  if (!(inflation >= 1)) throw new RangeError(`The inflation must be 1 or more; it is ${inflation}.`)
  const nominalMm = nominalGapMm(dimensions)
  const squares = dimensions.reduce((sum, { toleranceMm }) => sum + toleranceMm ** 2, 0)
  const reachMm = inflation * Math.sqrt(squares)
  return { nominalMm, minMm: nominalMm - reachMm, maxMm: nominalMm + reachMm }
}
