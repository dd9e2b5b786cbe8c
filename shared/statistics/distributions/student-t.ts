import { requireNumber, requirePositive, requireProbability } from '../argument-checks'
import { regularisedBeta, regularisedBetaOddsQuantile, regularisedBetaUpper } from './incomplete-beta'
import { lnGamma } from './ln-gamma'

/** Density of Student's t. Errors: RangeError unless the degrees of freedom are above zero. */
export function studentTPdf(t: number, degreesOfFreedom: number): number {
  requireNumber(t, 'value of t')
  requirePositive(degreesOfFreedom, 'degrees of freedom')
  const half = degreesOfFreedom / 2
  const lnScale = lnGamma(half + 0.5) - lnGamma(half) - Math.log(degreesOfFreedom * Math.PI) / 2
  return Math.exp(lnScale - (half + 0.5) * Math.log1p((t * t) / degreesOfFreedom))
}

/**
 * Probability that Student's t is at most t.
 *
 * Units: none. Errors: RangeError unless the degrees of freedom are above zero.
 */
export function studentTCdf(t: number, degreesOfFreedom: number): number {
  return studentTSf(-t, degreesOfFreedom)
}

/** Probability that Student's t exceeds t. */
export function studentTSf(t: number, degreesOfFreedom: number): number {
  requireNumber(t, 'value of t')
  requirePositive(degreesOfFreedom, 'degrees of freedom')
  const half = degreesOfFreedom / 2
  const square = t * t
  const bothTails =
    square > degreesOfFreedom
      ? regularisedBeta(1 / (1 + square / degreesOfFreedom), half, 0.5)
      : regularisedBetaUpper(square / (degreesOfFreedom + square), 0.5, half)
  return t > 0 ? bothTails / 2 : 1 - bothTails / 2
}

/** The t that Student's t stays at or below with this probability; ∓Infinity at 0 and 1. */
export function studentTQuantile(probability: number, degreesOfFreedom: number): number {
  requireProbability(probability, 'probability')
  requirePositive(degreesOfFreedom, 'degrees of freedom')
  if (probability === 0.5) return 0
  const bothTails = 2 * Math.min(probability, 1 - probability)
  const odds = regularisedBetaOddsQuantile(bothTails, degreesOfFreedom / 2, 0.5)
  const t = Math.sqrt(degreesOfFreedom / odds)
  return probability > 0.5 ? t : -t
}
