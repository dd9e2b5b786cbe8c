import type { Interval } from '@/shared/statistics/intervals/interval'
import {
  failureRateInterval,
  failureRateLowerBound,
  failureRateUpperBound,
} from '@/shared/statistics/intervals/failure-rate'
import type { LifeTest } from '@/shared/statistics/intervals/failure-rate'

/**
 * Bounds of the mean time to failure, in the hours of the test: the inverse of
 * the bounds of the rate, so the upper one is Infinity while nothing failed.
 * Source: NIST/SEMATECH e-Handbook 8.4.5.1.
 */
export function meanTimeInterval(test: LifeTest, confidence: number): Interval {
  const { lower, upper } = failureRateInterval(test, confidence)
  return { lower: 1 / upper, upper: 1 / lower }
}

/** One-sided: the mean time is at least this. */
export const meanTimeLowerBound = (test: LifeTest, confidence: number): number =>
  1 / failureRateUpperBound(test, confidence)

/** One-sided: the mean time is at most this. */
export const meanTimeUpperBound = (test: LifeTest, confidence: number): number =>
  1 / failureRateLowerBound(test, confidence)
