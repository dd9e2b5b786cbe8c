import { requireOpenFraction } from '../argument-checks'
import { noncentralTSf } from '../distributions/noncentral-t'
import { requireFinite } from '../reading-checks'
import type { ToleranceBasis } from '../tolerance/tolerance-content'

/**
 * The index (mean − limit) ÷ 3 s that a normal process has at least, with the stated confidence.
 * Exact for one limit: 3 · index · √n is noncentral t.
 *
 * Units: none. Errors: RangeError for an index that is no number or a confidence not strictly between 0 and 1.
 * Source: Chou, Owen and Borrego, Journal of Quality Technology 22 (1990) 223 (from memory).
 */
export function oneSidedIndexBound(index: number, basis: ToleranceBasis, confidence: number): number {
  requireFinite(index, 'index')
  requireOpenFraction(confidence, 'confidence')
  const { effectiveReadings, degreesOfFreedom } = basis
  const root = 3 * Math.sqrt(effectiveReadings)
  const seen = index * root
  const exceeds = (bound: number) =>
    noncentralTSf(seen, { degreesOfFreedom, noncentrality: bound * root }) > 1 - confidence
  let low = index
  let step = Math.max(1, Math.abs(index))
  while (exceeds(low)) {
    low -= step
    step *= 2
  }
  let high = index + Math.max(1, Math.abs(index))
  for (let halving = 0; halving < 60; halving++) {
    const middle = (low + high) / 2
    if (exceeds(middle)) high = middle
    else low = middle
  }
  return low
}
