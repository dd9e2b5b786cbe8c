import { requireNotNegative } from '../argument-checks'
import { normalCdf, normalSf } from '../distributions/normal'

/** A dimension that scatters normally. */
export interface ScatteredDimension {
  meanMm: number
  standardDeviationMm: number
}

/** A window for a difference; a side left out (or infinite) is open. */
export interface Window {
  leastMm?: number
  mostMm?: number
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
  { leastMm = -Infinity, mostMm = Infinity }: Window,
): WindowShares {
  requireNotNegative(outer.standardDeviationMm, 'standard deviation of the outer dimension')
  requireNotNegative(inner.standardDeviationMm, 'standard deviation of the inner dimension')
  const centreMm = outer.meanMm - inner.meanMm
  if (!Number.isFinite(centreMm)) throw new RangeError('The mean of a dimension is not a number.')
  if (!(leastMm <= mostMm)) throw new RangeError(`The window is empty: ${leastMm} mm to ${mostMm} mm.`)
  const spreadMm = Math.hypot(outer.standardDeviationMm, inner.standardDeviationMm)
  if (spreadMm === 0) return sharesWithoutSpread(centreMm, leastMm, mostMm)
  const low = (leastMm - centreMm) / spreadMm
  const high = (mostMm - centreMm) / spreadMm
  const within = low > 0 ? normalSf(low) - normalSf(high) : normalCdf(high) - normalCdf(low)
  return { below: normalCdf(low), within, above: normalSf(high) }
}

function sharesWithoutSpread(centreMm: number, leastMm: number, mostMm: number): WindowShares {
  if (centreMm < leastMm) return { below: 1, within: 0, above: 0 }
  if (centreMm > mostMm) return { below: 0, within: 0, above: 1 }
  return { below: 0, within: 1, above: 0 }
}
