import { requireCountWithin, requireCount, requireOpenFraction } from '../argument-checks'
import { hypergeometricPmf } from '../distributions/hypergeometric'
import { minCount, ROUNDING_SLACK } from '../intervals/min-count'

/**
 * The least sample that, found free of defectives, shows with the stated confidence that the
 * fraction defective of the process is at most the tolerable one.
 *
 * Units: units of product; fractions. Errors: RangeError unless both fractions lie strictly between 0 and 1.
 * Source: n = ln(1 − confidence) / ln(1 − tolerable), the binomial probability of none (the classical
 * bound; a Bayesian variant with uniform prior needs one unit less).
 */
export function zeroAcceptanceSample(tolerableFraction: number, confidence: number): number {
  requireOpenFraction(tolerableFraction, 'tolerable fraction defective')
  requireOpenFraction(confidence, 'confidence')
  const exact = Math.log1p(-confidence) / Math.log1p(-tolerableFraction)
  return Math.max(1, Math.ceil(exact * (1 - ROUNDING_SLACK)))
}

/**
 * The least sample from a lot that, found free of defectives, shows with the stated confidence that
 * the lot holds fewer than so many defectives.
 *
 * Units: units of product. Errors: RangeError unless the counts are whole, 1 ≤ defectives ≤ lot, and
 * the confidence lies strictly between 0 and 1.
 * Source: the hypergeometric probability of none. It can equal the risk exactly (lot 20, 1 defective,
 * 0.9: 18), so it is compared with a slack for rounding.
 */
export function zeroAcceptanceSampleFromLot(lotSize: number, defectives: number, confidence: number): number {
  requireCount(lotSize, 'lot size', 1)
  requireCount(defectives, 'number of defectives to be caught', 1)
  requireCountWithin(defectives, 'number of defectives to be caught', lotSize, 'lot size')
  requireOpenFraction(confidence, 'confidence')
  const risk = (1 - confidence) * (1 + ROUNDING_SLACK)
  const shows = (sampleSize: number) => hypergeometricPmf(0, { lotSize, defectives, sampleSize }) <= risk
  return minCount((sampleSize) => sampleSize >= lotSize || shows(sampleSize), 1, lotSize)
}
