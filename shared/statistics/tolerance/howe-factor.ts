import { chiSquareQuantile } from '../distributions/chi-square'
import { normalQuantile } from '../distributions/normal'
import {
  independent,
  requireToleranceArguments,
  type ToleranceBasis,
  type ToleranceContent,
} from './tolerance-content'

/**
 * Howe's approximate factor k for a two-sided tolerance interval of a normal population. Kept beside
 * the exact factor because printed examples use it; it is short by 0.3 % at 10 readings, 95 %/95 %.
 *
 * Units: none. Errors: as for the exact factor.
 * Source: Howe, J. Am. Stat. Assoc. 64 (1969); NIST/SEMATECH e-Handbook 7.2.6.3.
 */
export function howeToleranceFactor(readings: number, content: ToleranceContent): number {
  requireToleranceArguments(readings, content)
  return howeFactorFrom(independent(readings), content)
}

/** The same factor where mean and spread rest on readings in groups. */
export function howeFactorFrom(
  { effectiveReadings, degreesOfFreedom }: ToleranceBasis,
  { coverage, confidence }: ToleranceContent,
): number {
  const z = normalQuantile((1 + coverage) / 2)
  const chiSquare = chiSquareQuantile(1 - confidence, degreesOfFreedom)
  return z * Math.sqrt((degreesOfFreedom * (1 + 1 / effectiveReadings)) / chiSquare)
}
