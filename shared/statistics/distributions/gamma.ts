import { requireNotNegative, requirePositive } from '../argument-checks'
import { regularisedGamma, regularisedGammaQuantile, regularisedGammaUpper } from './incomplete-gamma'
import { lnGamma } from './ln-gamma'

/**
 * Density of the gamma distribution at x, for a shape and a scale (mean = shape × scale).
 *
 * Units: scale and x alike; the density in 1/x. Errors: RangeError unless x is zero or more and
 * shape and scale are above zero.
 */
export function gammaPdf(x: number, shape: number, scale: number): number {
  requireArguments(x, shape, scale)
  const ratio = x / scale
  if (ratio === 0) return shape > 1 ? 0 : shape === 1 ? 1 / scale : Infinity
  if (ratio === Infinity) return 0
  return Math.exp((shape - 1) * Math.log(ratio) - ratio - lnGamma(shape)) / scale
}

/** Probability that a gamma variable is at most x. */
export function gammaCdf(x: number, shape: number, scale: number): number {
  requireArguments(x, shape, scale)
  return regularisedGamma(shape, x / scale)
}

/** Probability that a gamma variable exceeds x. */
export function gammaSf(x: number, shape: number, scale: number): number {
  requireArguments(x, shape, scale)
  return regularisedGammaUpper(shape, x / scale)
}

/** The value that a gamma variable stays at or below with this probability. */
export function gammaQuantile(probability: number, shape: number, scale: number): number {
  requirePositive(scale, 'scale')
  return scale * regularisedGammaQuantile(probability, shape)
}

function requireArguments(x: number, shape: number, scale: number): void {
  requirePositive(shape, 'shape')
  requirePositive(scale, 'scale')
  if (x !== Infinity) requireNotNegative(x, 'value of a gamma variable')
}
