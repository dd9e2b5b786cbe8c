import { requireCount, requireOpenFraction, requirePositive } from '../argument-checks'
import { regularisedGammaQuantile } from '../distributions/incomplete-gamma'
import type { Interval } from './interval'

/** So many events over so much exposure: boards, hours, square metres. */
export interface EventsOverExposure {
  events: number
  exposure: number
}

/**
 * Exact two-sided interval for a rate of events that fall independently.
 *
 * Units: events per unit of exposure. Errors: RangeError unless the events are a whole number, the
 * exposure is above zero, and the confidence lies strictly between 0 and 1.
 * Source: Garwood, Biometrika 28 (1936); as chi-square quantiles, Ulm (1990).
 */
export function exactRateInterval(observed: EventsOverExposure, confidence: number): Interval {
  requireArguments(observed, confidence)
  const oneTail = (1 - confidence) / 2
  return { lower: lowerBound(observed, oneTail), upper: upperBound(observed, oneTail) }
}

/** One-sided: the rate is at most this, with the stated confidence. */
export function exactRateUpperBound(observed: EventsOverExposure, confidence: number): number {
  requireArguments(observed, confidence)
  return upperBound(observed, 1 - confidence)
}

/** One-sided: the rate is at least this, with the stated confidence. */
export function exactRateLowerBound(observed: EventsOverExposure, confidence: number): number {
  requireArguments(observed, confidence)
  return lowerBound(observed, 1 - confidence)
}

function lowerBound({ events, exposure }: EventsOverExposure, tail: number): number {
  return events === 0 ? 0 : regularisedGammaQuantile(tail, events) / exposure
}

function upperBound({ events, exposure }: EventsOverExposure, tail: number): number {
  return regularisedGammaQuantile(1 - tail, events + 1) / exposure
}

function requireArguments({ events, exposure }: EventsOverExposure, confidence: number): void {
  requireCount(events, 'number of events')
  requirePositive(exposure, 'exposure')
  requireOpenFraction(confidence, 'confidence')
}
