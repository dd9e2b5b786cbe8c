import { requireProbability } from '../argument-checks'
import { binomialCdf, binomialPmf } from '../distributions/binomial'
import type { DoublePlan } from './double-plan'

/** What a double plan does with a process of one fraction defective. */
export interface DoublePlanPerformance {
  acceptance: number
  /** Mean number of units inspected a lot, the second sample inspected to its end. */
  averageSample: number
}

/**
 * Acceptance and average sample of a double plan.
 *
 * Units: a fraction; units of product. Errors: RangeError unless the fraction lies in 0 … 1.
 * Source: definition; the second sample is drawn at counts above the first acceptance number and
 * below the first rejection number. A count in the gap of a reduced plan accepts the lot.
 */
export function doublePlanPerformance(plan: DoublePlan, fractionDefective: number): DoublePlanPerformance {
  requireProbability(fractionDefective, 'fraction defective')
  const { firstSize, firstAccept, firstReject, secondSize, secondReject } = plan
  let acceptance = atMost(firstAccept, firstSize, fractionDefective)
  let undecided = 0
  for (let first = firstAccept + 1; first < Math.min(firstReject, firstSize + 1); first++) {
    const chance = binomialPmf(first, firstSize, fractionDefective)
    undecided += chance
    acceptance += chance * atMost(secondReject - 1 - first, secondSize, fractionDefective)
  }
  return { acceptance, averageSample: firstSize + secondSize * undecided }
}

/** As the plan's limits may exceed a small sample, or be spent already. */
function atMost(found: number, sampleSize: number, fraction: number): number {
  if (found < 0) return 0
  return found >= sampleSize ? 1 : binomialCdf(found, sampleSize, fraction)
}
