import { requireCount, requireCountWithin, requireProbability } from '../argument-checks'
import { regularisedBeta, regularisedBetaUpper } from './incomplete-beta'
import { binomialDensity } from './saddle-point'

/**
 * Probability of exactly this many successes in so many independent trials of one chance.
 *
 * Units: none. Errors: RangeError unless the counts are whole, successes ≤ trials, and the chance a probability.
 * Source: Loader, Fast and Accurate Computation of Binomial Probabilities (2000).
 */
export function binomialPmf(successes: number, trials: number, chance: number): number {
  requireArguments(successes, trials, chance)
  return binomialDensity(successes, trials, chance, 1 - chance)
}

/**
 * Probability of at most this many successes.
 *
 * Source: the incomplete beta identity, Abramowitz and Stegun 26.5.24.
 */
export function binomialCdf(successes: number, trials: number, chance: number): number {
  requireArguments(successes, trials, chance)
  if (successes === trials) return 1
  return regularisedBetaUpper(chance, successes + 1, trials - successes)
}

/** Probability of more than this many successes. */
export function binomialSf(successes: number, trials: number, chance: number): number {
  requireArguments(successes, trials, chance)
  if (successes === trials) return 0
  return regularisedBeta(chance, successes + 1, trials - successes)
}

function requireArguments(successes: number, trials: number, chance: number): void {
  requireCount(trials, 'number of trials')
  requireCountWithin(successes, 'number of successes', trials, 'number of trials')
  requireProbability(chance, 'chance of success')
}
