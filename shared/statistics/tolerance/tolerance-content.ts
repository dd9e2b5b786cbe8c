import { requireCount, requireOpenFraction, requirePositive } from '../argument-checks'

/** What a tolerance bound promises: this share of the population lies within it, with this confidence. */
export interface ToleranceContent {
  coverage: number
  confidence: number
}

/**
 * What a mean and a standard deviation rest on. Of n independent readings: n and n − 1; readings in
 * groups are worth fewer, and not a whole number of them.
 */
export interface ToleranceBasis {
  readonly effectiveReadings: number
  readonly degreesOfFreedom: number
}

export const independent = (readings: number): ToleranceBasis => ({
  effectiveReadings: readings,
  degreesOfFreedom: readings - 1,
})

/** Errors: RangeError unless both are above zero and the content lies strictly between 0 and 1. */
export function requireToleranceBasis(
  { effectiveReadings, degreesOfFreedom }: ToleranceBasis,
  { coverage, confidence }: ToleranceContent,
): void {
  requirePositive(effectiveReadings, 'effective number of readings')
  requirePositive(degreesOfFreedom, 'degrees of freedom')
  requireOpenFraction(coverage, 'share of the population to be covered')
  requireOpenFraction(confidence, 'confidence')
}

/** Errors: RangeError for fewer than two readings, which show no spread. */
export function requireToleranceArguments(
  readings: number,
  { coverage, confidence }: ToleranceContent,
): void {
  requireCount(readings, 'number of readings', 2)
  requireOpenFraction(coverage, 'share of the population to be covered')
  requireOpenFraction(confidence, 'confidence')
}
