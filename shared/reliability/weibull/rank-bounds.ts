import { requireOpenFraction } from '@/shared/statistics/argument-checks'
import { betaQuantile } from '@/shared/statistics/distributions/beta'
import type { LifeData } from './life-data'
import { medianRanks, type RankedFailure } from './median-ranks'

/** A failure with its median rank, and between which shares the true one lies with the confidence asked. */
export interface BoundedRank extends RankedFailure {
  readonly min: number
  readonly max: number
}

/**
 * Two-sided bounds of the share failed at each failure: the rank of the i-th of
 * n is Beta(i, n + 1 − i) distributed; with units taken out unfailed, i is
 * Johnson's adjusted rank. Shares between 0 and 1. RangeError as for the median
 * ranks, or unless the confidence lies strictly between 0 and 1.
 * Source: order statistics of a uniform sample; tables of 5 % and 95 % ranks, Johnson 1964 (from memory).
 */
export function rankBounds(data: LifeData, confidence: number): BoundedRank[] {
  requireOpenFraction(confidence, 'confidence')
  const units = data.failures.length + (data.suspensions?.length ?? 0)
  const tail = (1 - confidence) / 2
  return medianRanks(data).map(({ life, shareFailed }) => {
    const rank = shareFailed * (units + 0.4) + 0.3
    return {
      life,
      shareFailed,
      min: betaQuantile(tail, rank, units + 1 - rank),
      max: betaQuantile(1 - tail, rank, units + 1 - rank),
    }
  })
}
