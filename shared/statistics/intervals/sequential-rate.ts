import { requireCount, requireOpenFraction, requirePositive } from '@/shared/statistics/argument-checks'
import { regularisedGamma, regularisedGammaUpper } from '@/shared/statistics/distributions/incomplete-gamma'
import { lnGamma } from '@/shared/statistics/distributions/ln-gamma'
import { computed } from '@/shared/sources/provenance'
import type { EventsOverExposure } from './exact-poisson-rate'

/**
 * Bounds of a rate that hold at every look, however often one looks and
 * whenever one stops: a fixed-sample bound looked at after every board claims
 * its confidence far too often. For Poisson counts, and for joints each
 * defective or not, where they are a little wide.
 *
 * Method: likelihood ratios against the rate in question, mixed over rates below
 * it (density ½·u^−½ of the ratio u) or above it (density 0.1·e^−0.1(u−1)), pass 1/α
 * at any time with a chance of at most α. Sources: J. Ville, Étude critique de
 * la notion de collectif (1939); H. Robbins, Annals of Mathematical Statistics
 * 41 (1970) 1397; S. R. Howard, A. Ramdas, J. McAuliffe, J. Sekhon, Annals of
 * Statistics 49 (2021) 1055 (mixtures of gamma form).
 */
export const SEQUENTIAL_RATE_SOURCE = computed(
  'Confidence sequence of a rate by a mixture of likelihood ratios: Robbins, Annals of Mathematical Statistics 41 (1970) 1397; Howard et al., Annals of Statistics 49 (2021) 1055',
)

/** Leans towards low rates, as a sound process has few defects or none. */
const LEANING = 0.5
/** Spreads widely above, so that a process gone wrong by ten times or more shows within two or three events. */
const SPREADING = 0.1

/** At no look of ever so many is the rate above this, with the stated confidence. Units and errors as for the exact rate. */
export function sequentialRateUpperBound(
  { events, exposure }: EventsOverExposure,
  confidence: number,
): number {
  requirePositive(exposure, 'exposure')
  return eventsExpectedToShow(events, confidence) / exposure
}

/** Events that must have been expected, so many having come, for the rate to be shown lower than thought. */
export function eventsExpectedToShow(events: number, confidence: number): number {
  requireCount(events, 'number of events')
  const needed = lnOfOdds(confidence)
  let high = events + 1
  while (lnEvidenceBelow(events, high) < needed) high *= 2
  return crossing((expected) => lnEvidenceBelow(events, expected) >= needed, 0, high)
}

/** Likewise: at no look is the rate below this. 0 while the events are too few to say. */
export function sequentialRateLowerBound(
  { events, exposure }: EventsOverExposure,
  confidence: number,
): number {
  requireCount(events, 'number of events')
  requirePositive(exposure, 'exposure')
  const needed = lnOfOdds(confidence)
  if (lnEvidenceAbove(events, 0) < needed) return 0
  return crossing((expected) => lnEvidenceAbove(events, expected) < needed, 0, events) / exposure
}

/** ln of 1/α: what the evidence must come to. */
function lnOfOdds(confidence: number): number {
  requireOpenFraction(confidence, 'confidence')
  return -Math.log1p(-confidence)
}

/** ln of ∫₀¹ uⁿ·e^(m(1−u))·½u^−½ du: how much likelier rates below are than the one that expects m events. */
function lnEvidenceBelow(events: number, expected: number): number {
  const shape = events + LEANING
  return (
    Math.log(LEANING) +
    expected -
    shape * Math.log(expected) +
    lnGamma(shape) +
    Math.log(regularisedGamma(shape, expected))
  )
}

/** ln of ∫₁^∞ uⁿ·e^(−m(u−1))·0.1·e^−0.1(u−1) du: the same for rates above. */
function lnEvidenceAbove(events: number, expected: number): number {
  const shape = events + 1
  const rate = expected + SPREADING
  return (
    Math.log(SPREADING) +
    rate -
    shape * Math.log(rate) +
    lnGamma(shape) +
    Math.log(regularisedGammaUpper(shape, rate))
  )
}

/** Where a condition that is false at `low` becomes true on the way to `high`, by halving. */
function crossing(isBeyond: (value: number) => boolean, low: number, high: number): number {
  while (high - low > 1e-13 * high) {
    const middle = (low + high) / 2
    if (middle === low || middle === high) break
    if (isBeyond(middle)) high = middle
    else low = middle
  }
  return high
}
