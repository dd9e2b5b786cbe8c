import { requirePositive, requireProbability } from '../argument-checks'
import { regularisedBeta, regularisedBetaQuantile, regularisedBetaUpper } from './incomplete-beta'
import { lnGamma } from './ln-gamma'

/**
 * Density of the beta distribution at x.
 *
 * Units: none. Errors: RangeError unless x lies in 0 … 1 and both shapes are above zero.
 */
export function betaPdf(x: number, a: number, b: number): number {
  requirePositive(a, 'first shape')
  requirePositive(b, 'second shape')
  requireProbability(x, 'value of a beta variable')
  if (x === 0) return a > 1 ? 0 : a === 1 ? b : Infinity
  if (x === 1) return b > 1 ? 0 : b === 1 ? a : Infinity
  const lnBeta = lnGamma(a) + lnGamma(b) - lnGamma(a + b)
  return Math.exp((a - 1) * Math.log(x) + (b - 1) * Math.log1p(-x) - lnBeta)
}

/** Probability that a beta variable is at most x. */
export const betaCdf = regularisedBeta

/** Probability that a beta variable exceeds x. */
export const betaSf = regularisedBetaUpper

/** betaQuantile(probability, a, b): the value that a beta variable stays at or below. */
export const betaQuantile = regularisedBetaQuantile
