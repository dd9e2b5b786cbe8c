import { normalCdf } from '../distributions/normal'
import { requireReadings } from '../reading-checks'
import { mean, standardDeviation } from '../sample-moments'

/** Fewer readings show next to nothing of a shape. */
export const FEWEST_FOR_NORMALITY = 8

/** How far readings lie from the normal distribution of their own mean and spread. */
export interface NormalityLook {
  /** Anderson–Darling's A², corrected for the number of readings. */
  readonly statistic: number
  /** The chance of so large a statistic where the readings are normal. */
  readonly pValue: number
}

/**
 * Anderson–Darling test of normality with mean and spread estimated.
 *
 * Units: none. Errors: RangeError for fewer than eight readings, or readings all alike.
 * Source: D'Agostino and Stephens, Goodness-of-Fit Techniques (1986), tables 4.7 and 4.9 (from memory).
 */
export function normalityLook(readings: readonly number[]): NormalityLook {
  requireReadings(readings, 'readings', FEWEST_FOR_NORMALITY)
  const spread = standardDeviation(readings)
  if (!(spread > 0)) throw new RangeError('Readings that are all alike have no shape.')
  const centre = mean(readings)
  const scores = readings.map((reading) => (reading - centre) / spread).sort((a, b) => a - b)
  const size = scores.length
  const sum = scores.reduce((total, score, index) => {
    const opposite = scores[size - 1 - index]!
    return total + (2 * index + 1) * (Math.log(normalCdf(score)) + Math.log(normalCdf(-opposite)))
  }, 0)
  const statistic = (-size - sum / size) * (1 + 0.75 / size + 2.25 / size ** 2)
  return { statistic, pValue: pValueOf(statistic) }
}

function pValueOf(a: number): number {
  if (a >= 0.6) return Math.exp(1.2937 - 5.709 * a + 0.0186 * a * a)
  if (a >= 0.34) return Math.exp(0.9177 - 4.279 * a - 1.38 * a * a)
  if (a >= 0.2) return 1 - Math.exp(-8.318 + 42.796 * a - 59.938 * a * a)
  return 1 - Math.exp(-13.436 + 101.14 * a - 223.73 * a * a)
}
