import { requireCount, requireCountWithin, requireOpenFraction } from '../argument-checks'
import { hypergeometricCdf } from '../distributions/hypergeometric'
import { exactProportionUpperBound } from '../intervals/exact-proportion'
import { minCount, ROUNDING_SLACK } from '../intervals/min-count'

/** A sample drawn from a lot and what was found in it. */
export interface LotSample {
  lotSize: number
  sampleSize: number
  defectives: number
}

/** What the sample shows about the rest, each with the stated confidence. */
export interface Proof {
  /** The lot itself holds at most so many defectives, those found included. */
  lotDefectivesAtMost: number
  lotFractionAtMost: number
  /** And at least so many, each bound with the confidence by itself. */
  lotDefectivesAtLeast: number
  /** The process that made the lot gives at most this fraction defective. */
  processFractionAtMost: number
}

/**
 * The exact bounds that a sample sets: whatever the plan promised on average, this is what
 * this lot's sample proved.
 *
 * Units: units of product; fractions. Errors: RangeError unless the counts are whole, defectives ≤
 * sample ≤ lot, sample ≥ 1, and the confidence lies strictly between 0 and 1.
 * Source: Clopper and Pearson, Biometrika 26 (1934) for the process; the same argument with
 * hypergeometric probabilities for the lot (Buonaccorsi, The American Statistician 41 (1987), from memory).
 */
export function whatTheSampleProves(sample: LotSample, confidence: number): Proof {
  const { lotSize, sampleSize, defectives } = sample
  requireCount(sampleSize, 'sample size', 1)
  requireCountWithin(sampleSize, 'sample size', lotSize, 'lot size')
  requireCountWithin(defectives, 'number of defectives found', sampleSize, 'sample size')
  requireOpenFraction(confidence, 'confidence')
  const lotDefectivesAtMost = maxInLot(sample, 1 - confidence)
  return {
    lotDefectivesAtMost,
    lotFractionAtMost: lotDefectivesAtMost / lotSize,
    // What is true of the nonconforming pieces at least is what is true of the good ones at most.
    lotDefectivesAtLeast:
      lotSize - maxInLot({ lotSize, sampleSize, defectives: sampleSize - defectives }, 1 - confidence),
    processFractionAtMost: exactProportionUpperBound(
      { found: defectives, inspected: sampleSize },
      confidence,
    ),
  }
}

/** The most defectives in the lot that leave so good a sample likelier than the risk. */
function maxInLot({ lotSize, sampleSize, defectives }: LotSample, risk: number): number {
  const max = lotSize - (sampleSize - defectives)
  const limit = risk * (1 + ROUNDING_SLACK)
  const isRuledOut = (inLot: number) =>
    inLot > max || hypergeometricCdf(defectives, { lotSize, defectives: inLot, sampleSize }) <= limit
  return minCount(isRuledOut, defectives, max) - 1
}
