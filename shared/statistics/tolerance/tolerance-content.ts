import { requireCount, requireOpenFraction } from '../argument-checks'

/** What a tolerance bound promises: this share of the population lies within it, with this confidence. */
export interface ToleranceContent {
  coverage: number
  confidence: number
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
