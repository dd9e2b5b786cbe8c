import { requireReadings, type Readings } from './reading-checks'

/**
 * Arithmetic mean. Summed as differences from the first reading, so that equal
 * readings give exactly themselves and a large common offset costs no digits.
 */
export function mean(values: Readings): number {
  requireReadings(values, 'readings')
  const first = values[0]!
  let excess = 0
  for (const value of values) excess += value - first
  return first + excess / values.length
}

/** Sum of squared deviations from the mean (two passes, corrected for rounding of the mean). */
export function sumOfSquaredDeviations(values: Readings): number {
  const centre = mean(values)
  let squares = 0
  let residue = 0
  for (const value of values) {
    const deviation = value - centre
    squares += deviation * deviation
    residue += deviation
  }
  return Math.max(0, squares - (residue * residue) / values.length)
}

/** Sample standard deviation, divisor n − 1. Needs two readings. */
export function standardDeviation(values: Readings): number {
  requireReadings(values, 'readings', 2)
  return Math.sqrt(sumOfSquaredDeviations(values) / (values.length - 1))
}

/** Largest minus smallest. */
export function range(values: Readings): number {
  requireReadings(values, 'readings')
  let min = Infinity
  let max = -Infinity
  for (const value of values) {
    if (value < min) min = value
    if (value > max) max = value
  }
  return max - min
}
