import { requireNotNegative } from '../argument-checks'
import { normalCdf, normalSf } from '../distributions/normal'

/** A dimension that scatters normally. */
export interface ScatteredDimension {
  meanMm: number
  standardDeviationMm: number
}

/** A window for a difference; a side left out (or infinite) is open. */
export interface Window {
  minMm?: number
  maxMm?: number
}

/** Where the difference falls; the three add up to 1. */
export interface WindowShares {
  below: number
  within: number
  above: number
}

/**
 * The probability that the difference of two independent normal dimensions (hole less lead, say)
 * falls within a window. Its ends count as within.
 *
 * Units: millimetres in, probabilities out. Errors: RangeError for a mean that is no number, a
 * negative standard deviation, or a window whose least exceeds its most.
 * Source: the difference of independent normal variables is normal with the variances added.
 */
export function differenceInWindow(
  outer: ScatteredDimension,
  inner: ScatteredDimension,
  { minMm = -Infinity, maxMm = Infinity }: Window,
): WindowShares {
  requireNotNegative(outer.standardDeviationMm, 'standard deviation of the outer dimension')
  requireNotNegative(inner.standardDeviationMm, 'standard deviation of the inner dimension')
  const centreMm = outer.meanMm - inner.meanMm
  if (!Number.isFinite(centreMm)) throw new RangeError('The mean of a dimension is not a number.')
  if (!(minMm <= maxMm)) throw new RangeError(`The window is empty: ${minMm} mm to ${maxMm} mm.`)
  const spreadMm = Math.hypot(outer.standardDeviationMm, inner.standardDeviationMm)
  if (spreadMm === 0) return sharesWithoutSpread(centreMm, minMm, maxMm)
  const low = (minMm - centreMm) / spreadMm
  const high = (maxMm - centreMm) / spreadMm
  const within = low > 0 ? normalSf(low) - normalSf(high) : normalCdf(high) - normalCdf(low)
  return { below: normalCdf(low), within, above: normalSf(high) }
}

function sharesWithoutSpread(centreMm: number, minMm: number, maxMm: number): WindowShares {
  if (centreMm < minMm) return { below: 1, within: 0, above: 0 }
  if (centreMm > maxMm) return { below: 0, within: 0, above: 1 }
  return { below: 0, within: 1, above: 0 }
}
