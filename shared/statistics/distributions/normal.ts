import erfc from '@stdlib/math-base-special-erfc'
import erfcinv from '@stdlib/math-base-special-erfcinv'
import { requireNumber, requireProbability } from '../argument-checks'

const SQRT_TWO_PI = Math.sqrt(2 * Math.PI)

/** Density of the standard normal distribution at z. */
export function normalPdf(z: number): number {
  requireNumber(z, 'normal deviate')
  return Math.exp((-z * z) / 2) / SQRT_TWO_PI
}

/**
 * Probability that a standard normal deviate is at most z; exact to full relative precision in the
 * far lower tail. For a mean and a standard deviation pass (x − mean) / standard deviation.
 */
export function normalCdf(z: number): number {
  requireNumber(z, 'normal deviate')
  return erfc(-z / Math.SQRT2) / 2
}

/** Probability that a standard normal deviate exceeds z. */
export function normalSf(z: number): number {
  return normalCdf(-z)
}

/** The z that a standard normal deviate stays at or below with this probability; ∓Infinity at 0 and 1. */
export function normalQuantile(probability: number): number {
  requireProbability(probability, 'probability')
  return probability === 0.5 ? 0 : -Math.SQRT2 * erfcinv(2 * probability)
}
