import { requireNotNegative, requirePositive } from '../argument-checks'
import { regularisedGamma, regularisedGammaQuantile, regularisedGammaUpper } from './incomplete-gamma'
import { gammaPdf } from './gamma'

/** Density of the chi-square distribution. */
export function chiSquarePdf(x: number, degreesOfFreedom: number): number {
  return gammaPdf(x, degreesOfFreedom / 2, 2)
}

/**
 * Probability that chi-square is at most x.
 *
 * Units: none. Errors: RangeError unless x is zero or more and the degrees of freedom above zero.
 */
export function chiSquareCdf(x: number, degreesOfFreedom: number): number {
  requireArguments(x, degreesOfFreedom)
  return regularisedGamma(degreesOfFreedom / 2, x / 2)
}

/** Probability that chi-square exceeds x. */
export function chiSquareSf(x: number, degreesOfFreedom: number): number {
  requireArguments(x, degreesOfFreedom)
  return regularisedGammaUpper(degreesOfFreedom / 2, x / 2)
}

/** The value that chi-square stays at or below with this probability. */
export function chiSquareQuantile(probability: number, degreesOfFreedom: number): number {
  requirePositive(degreesOfFreedom, 'degrees of freedom')
  return 2 * regularisedGammaQuantile(probability, degreesOfFreedom / 2)
}

function requireArguments(x: number, degreesOfFreedom: number): void {
  requirePositive(degreesOfFreedom, 'degrees of freedom')
  if (x !== Infinity) requireNotNegative(x, 'value of chi-square')
}
