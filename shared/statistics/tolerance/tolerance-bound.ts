import { mean, standardDeviation } from '../sample-moments'
import type { Interval } from '../intervals/interval'
import { oneSidedToleranceFactor } from './one-sided-factor'
import type { ToleranceContent } from './tolerance-content'
import { twoSidedToleranceFactor } from './two-sided-factor'

/**
 * The value that at least the wanted share of the population exceeds, with the stated confidence,
 * judged from readings of a normal population.
 *
 * Units: those of the readings. Errors: RangeError for fewer than two readings or one that is no number.
 * Readings that show no spread give their mean: the instrument is then too coarse to tell.
 * Source: NIST/SEMATECH e-Handbook 7.2.6.3.
 */
export function lowerToleranceBound(readings: readonly number[], content: ToleranceContent): number {
  return mean(readings) - oneSidedToleranceFactor(readings.length, content) * standardDeviation(readings)
}

/** The value that at least the wanted share of the population stays below, with the stated confidence. */
export function upperToleranceBound(readings: readonly number[], content: ToleranceContent): number {
  return mean(readings) + oneSidedToleranceFactor(readings.length, content) * standardDeviation(readings)
}

/** The interval that holds at least the wanted share of the population, with the stated confidence. */
export function toleranceInterval(readings: readonly number[], content: ToleranceContent): Interval {
  const centre = mean(readings)
  const reach = twoSidedToleranceFactor(readings.length, content) * standardDeviation(readings)
  return { lower: centre - reach, upper: centre + reach }
}
