import { requireNotNegative, requirePositive, requireProbability } from '../argument-checks'

/**
 * Density of the Weibull distribution at x, for a shape (slope) and a scale (characteristic life).
 *
 * Units: scale and x alike; the density in 1/x. Errors: RangeError unless x is zero or more and
 * shape and scale are above zero.
 */
export function weibullPdf(x: number, shape: number, scale: number): number {
  requireArguments(x, shape, scale)
  const ratio = x / scale
  if (ratio === 0) return shape > 1 ? 0 : shape === 1 ? 1 / scale : Infinity
  if (ratio === Infinity) return 0
  return (shape / scale) * Math.pow(ratio, shape - 1) * Math.exp(-Math.pow(ratio, shape))
}

/** Probability of failure by x. */
export function weibullCdf(x: number, shape: number, scale: number): number {
  requireArguments(x, shape, scale)
  return -Math.expm1(-Math.pow(x / scale, shape))
}

/** Probability of surviving x. */
export function weibullSf(x: number, shape: number, scale: number): number {
  requireArguments(x, shape, scale)
  return Math.exp(-Math.pow(x / scale, shape))
}

/** The life by which this fraction has failed; Infinity at 1. */
export function weibullQuantile(probability: number, shape: number, scale: number): number {
  requireProbability(probability, 'probability')
  requirePositive(shape, 'shape')
  requirePositive(scale, 'scale')
  return scale * Math.pow(-Math.log1p(-probability), 1 / shape)
}

function requireArguments(x: number, shape: number, scale: number): void {
  requirePositive(shape, 'shape')
  requirePositive(scale, 'scale')
  if (x !== Infinity) requireNotNegative(x, 'life')
}
