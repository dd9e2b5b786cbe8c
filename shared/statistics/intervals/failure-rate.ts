import { requireCount, requireOpenFraction, requirePositive } from '../argument-checks'
import { chiSquareQuantile } from '../distributions/chi-square'
import type { Interval } from './interval'

/**
 * A life test at a constant failure rate: failures over the hours of all units together, ended
 * at a time set before or at the last failure.
 */
export interface LifeTest {
  failures: number
  unitHours: number
  endedBy: 'time' | 'failure'
}

/**
 * Two-sided bounds of a constant failure rate.
 *
 * Units: failures per unit-hour. Errors: RangeError unless the failures are a whole number (at least
 * one when a failure ended the test), the hours above zero and the confidence strictly between 0 and 1.
 * Source: NIST/SEMATECH e-Handbook 8.4.5.1; chi-square with 2r + 2 degrees of freedom for the upper
 * bound when time ended the test, 2r when a failure did.
 */
export function failureRateInterval(test: LifeTest, confidence: number): Interval {
  requireArguments(test, confidence)
  const oneTail = (1 - confidence) / 2
  return { lower: lowerBound(test, oneTail), upper: upperBound(test, oneTail) }
}

/** One-sided: the failure rate is at most this, with the stated confidence. */
export function failureRateUpperBound(test: LifeTest, confidence: number): number {
  requireArguments(test, confidence)
  return upperBound(test, 1 - confidence)
}

/** One-sided: the failure rate is at least this, with the stated confidence. */
export function failureRateLowerBound(test: LifeTest, confidence: number): number {
  requireArguments(test, confidence)
  return lowerBound(test, 1 - confidence)
}

function lowerBound({ failures, unitHours }: LifeTest, tail: number): number {
  return failures === 0 ? 0 : chiSquareQuantile(tail, 2 * failures) / (2 * unitHours)
}

function upperBound({ failures, unitHours, endedBy }: LifeTest, tail: number): number {
  const degreesOfFreedom = endedBy === 'time' ? 2 * failures + 2 : 2 * failures
  return chiSquareQuantile(1 - tail, degreesOfFreedom) / (2 * unitHours)
}

function requireArguments({ failures, unitHours, endedBy }: LifeTest, confidence: number): void {
  requireCount(failures, 'number of failures', endedBy === 'failure' ? 1 : 0)
  requirePositive(unitHours, 'hours of all units together')
  requireOpenFraction(confidence, 'confidence')
}
