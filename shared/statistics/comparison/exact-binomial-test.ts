import { requireCount, requireCountWithin, requireProbability } from '@/shared/statistics/argument-checks'
import { binomialPmf } from '@/shared/statistics/distributions/binomial'

/** Outcomes whose chance differs by rounding alone count as equally likely. */
const ROUNDING = 1 + 1e-7

/**
 * Two-sided p value: the chance of an outcome no likelier than the one seen,
 * if each of the trials succeeds with the supposed chance. Exact at any count.
 * Source: the usual exact test by ordered likelihood.
 */
export function exactBinomialPValue(successes: number, trials: number, supposedChance: number): number {
  requireCount(trials, 'number of trials')
  requireCountWithin(successes, 'number of successes', trials, 'number of trials')
  requireProbability(supposedChance, 'supposed chance')
  const seen = binomialPmf(successes, trials, supposedChance)
  let sum = 0
  for (let outcome = 0; outcome <= trials; outcome++) {
    const chance = binomialPmf(outcome, trials, supposedChance)
    if (chance <= seen * ROUNDING) sum += chance
  }
  return Math.min(1, sum)
}
