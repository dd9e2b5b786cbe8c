import { requireCount, requireCountWithin, requireOpenFraction } from '../argument-checks'
import { regularisedBetaQuantile } from '../distributions/incomplete-beta'
import type { Interval } from './interval'

/** So many found among so many looked at. */
export interface Tally {
  found: number
  inspected: number
}

/**
 * Exact two-sided interval for a proportion: at least the stated confidence, whatever the truth.
 *
 * Units: fractions. Errors: RangeError unless the counts are whole, found ≤ inspected, at least one
 * was inspected, and the confidence lies strictly between 0 and 1.
 * Source: Clopper and Pearson, Biometrika 26 (1934); NIST/SEMATECH e-Handbook 7.2.4.1.
 */
export function exactProportionInterval(tally: Tally, confidence: number): Interval {
  requireArguments(tally, confidence)
  const oneTail = (1 - confidence) / 2
  return { lower: lowerBound(tally, oneTail), upper: upperBound(tally, oneTail) }
}

/** One-sided: the proportion is at most this, with the stated confidence. */
export function exactProportionUpperBound(tally: Tally, confidence: number): number {
  requireArguments(tally, confidence)
  return upperBound(tally, 1 - confidence)
}

/** One-sided: the proportion is at least this, with the stated confidence. */
export function exactProportionLowerBound(tally: Tally, confidence: number): number {
  requireArguments(tally, confidence)
  return lowerBound(tally, 1 - confidence)
}

function lowerBound({ found, inspected }: Tally, tail: number): number {
  return found === 0 ? 0 : regularisedBetaQuantile(tail, found, inspected - found + 1)
}

/** The largest p with P(X ≤ found | p) ≥ tail, as the mirrored lower bound so that the tail keeps its digits. */
function upperBound({ found, inspected }: Tally, tail: number): number {
  if (found === inspected) return 1
  if (found === 0) return -Math.expm1(Math.log(tail) / inspected)
  return regularisedBetaQuantile(1 - tail, found + 1, inspected - found)
}

function requireArguments({ found, inspected }: Tally, confidence: number): void {
  requireCount(inspected, 'number inspected', 1)
  requireCountWithin(found, 'number found', inspected, 'number inspected')
  requireOpenFraction(confidence, 'confidence')
}
