import { requireNotNegative, requirePositive } from '../argument-checks'
import { regularisedBeta, regularisedBetaOddsQuantile, regularisedBetaUpper } from './incomplete-beta'

/**
 * Probability that F, a ratio of two mean squares, is at most f.
 *
 * Units: none. Errors: RangeError unless f is zero or more and both degrees of freedom above zero.
 */
export function fCdf(f: number, upperDegrees: number, lowerDegrees: number): number {
  requireArguments(f, upperDegrees, lowerDegrees)
  const odds = (f * upperDegrees) / lowerDegrees
  return odds <= 1
    ? regularisedBeta(odds / (1 + odds), upperDegrees / 2, lowerDegrees / 2)
    : regularisedBetaUpper(1 / (1 + odds), lowerDegrees / 2, upperDegrees / 2)
}

/** Probability that F exceeds f: the significance of a ratio of mean squares. */
export function fSf(f: number, upperDegrees: number, lowerDegrees: number): number {
  requireArguments(f, upperDegrees, lowerDegrees)
  return f === 0 ? 1 : fCdf(1 / f, lowerDegrees, upperDegrees)
}

/** The value that F stays at or below with this probability. */
export function fQuantile(probability: number, upperDegrees: number, lowerDegrees: number): number {
  requirePositive(upperDegrees, 'upper degrees of freedom')
  requirePositive(lowerDegrees, 'lower degrees of freedom')
  const odds = regularisedBetaOddsQuantile(probability, upperDegrees / 2, lowerDegrees / 2)
  return (odds * lowerDegrees) / upperDegrees
}

function requireArguments(f: number, upperDegrees: number, lowerDegrees: number): void {
  requirePositive(upperDegrees, 'upper degrees of freedom')
  requirePositive(lowerDegrees, 'lower degrees of freedom')
  if (f !== Infinity) requireNotNegative(f, 'value of F')
}
