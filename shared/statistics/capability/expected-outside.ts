import { requirePositive } from '@/shared/statistics/argument-checks'
import { normalCdf, normalSf } from '@/shared/statistics/distributions/normal'
import { requireFinite } from '@/shared/statistics/reading-checks'
import type { ProcessSpread } from './indices'
import { requireSpecificationLimits } from './specification-limits'
import type { SpecificationLimits } from './specification-limits'

/**
 * Readings per million beyond each limit, if the process is normal and stays as
 * it is. The far tails of a real process are seldom normal: a guide, no promise.
 */
export function expectedOutsidePerMillion(
  { lower, upper, ...rest }: SpecificationLimits,
  { mean, sigma }: ProcessSpread,
): { below: number; above: number } {
  requireSpecificationLimits({ lower, upper, ...rest })
  requireFinite(mean, 'mean of the process')
  requirePositive(sigma, 'standard deviation of the process')
  return {
    below: lower === undefined ? 0 : 1e6 * normalCdf((lower - mean) / sigma),
    above: upper === undefined ? 0 : 1e6 * normalSf((upper - mean) / sigma),
  }
}
