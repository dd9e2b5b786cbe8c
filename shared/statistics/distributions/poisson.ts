import { requireCount, requireNotNegative } from '../argument-checks'
import { regularisedGamma, regularisedGammaUpper } from './incomplete-gamma'
import { poissonDensity } from './saddle-point'

/**
 * Probability of exactly this many events when so many are expected.
 *
 * Units: none. Errors: RangeError unless the count is whole and the mean zero or more.
 * Source: Loader, Fast and Accurate Computation of Binomial Probabilities (2000), section 4.
 */
export function poissonPmf(events: number, mean: number): number {
  requireArguments(events, mean)
  return poissonDensity(events, mean)
}

/**
 * Probability of at most this many events.
 *
 * Source: the incomplete gamma identity, Abramowitz and Stegun 26.4.21.
 */
export function poissonCdf(events: number, mean: number): number {
  requireArguments(events, mean)
  return regularisedGammaUpper(events + 1, mean)
}

/** Probability of more than this many events. */
export function poissonSf(events: number, mean: number): number {
  requireArguments(events, mean)
  return regularisedGamma(events + 1, mean)
}

function requireArguments(events: number, mean: number): void {
  requireCount(events, 'number of events')
  requireNotNegative(mean, 'expected number of events')
}
