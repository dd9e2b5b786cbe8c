import { requireCount, requireCountWithin } from '../argument-checks'
import { binomialDensity } from './saddle-point'

/** A lot of `lotSize` with `defectives` in it, of which `sampleSize` are drawn without replacement. */
export interface Draw {
  lotSize: number
  defectives: number
  sampleSize: number
}

/**
 * Probability of finding exactly so many defectives in the sample.
 *
 * Units: none. Errors: RangeError unless all are whole and neither the defectives nor the sample exceed the lot.
 * Source: as a ratio of three binomial probabilities, Loader, Fast and Accurate Computation of
 * Binomial Probabilities (2000), section 5.
 */
export function hypergeometricPmf(found: number, draw: Draw): number {
  requireArguments(found, draw)
  return pmf(found, draw)
}

/**
 * Probability of finding at most so many defectives. Sums the shorter tail from its largest term
 * by the ratio of neighbouring terms, so that small probabilities keep their digits.
 */
export function hypergeometricCdf(found: number, draw: Draw): number {
  requireArguments(found, draw)
  return found < mean(draw) ? lowerTail(found, draw) : 1 - upperTail(found + 1, draw)
}

/** Probability of finding more than so many defectives. */
export function hypergeometricSf(found: number, draw: Draw): number {
  requireArguments(found, draw)
  return found < mean(draw) ? 1 - lowerTail(found, draw) : upperTail(found + 1, draw)
}

const mean = ({ lotSize, defectives, sampleSize }: Draw): number =>
  lotSize === 0 ? 0 : (sampleSize * defectives) / lotSize

const fewest = ({ lotSize, defectives, sampleSize }: Draw): number =>
  Math.max(0, sampleSize + defectives - lotSize)

const max = ({ defectives, sampleSize }: Draw): number => Math.min(defectives, sampleSize)

function pmf(found: number, draw: Draw): number {
  const { lotSize, defectives, sampleSize } = draw
  if (found < fewest(draw) || found > max(draw)) return 0
  if (lotSize === 0 || sampleSize === 0 || sampleSize === lotSize) return 1
  const drawn = sampleSize / lotSize
  const left = (lotSize - sampleSize) / lotSize
  return (
    (binomialDensity(found, defectives, drawn, left) *
      binomialDensity(sampleSize - found, lotSize - defectives, drawn, left)) /
    binomialDensity(sampleSize, lotSize, drawn, left)
  )
}

function lowerTail(from: number, draw: Draw): number {
  const { lotSize, defectives, sampleSize } = draw
  let term = pmf(from, draw)
  let sum = term
  for (let x = from; x > fewest(draw) && term > sum * 1e-17; x--) {
    term *= (x * (lotSize - defectives - sampleSize + x)) / ((defectives - x + 1) * (sampleSize - x + 1))
    sum += term
  }
  return sum
}

function upperTail(from: number, draw: Draw): number {
  const { lotSize, defectives, sampleSize } = draw
  let term = pmf(from, draw)
  let sum = term
  for (let x = from; x < max(draw) && term > sum * 1e-17; x++) {
    term *= ((defectives - x) * (sampleSize - x)) / ((x + 1) * (lotSize - defectives - sampleSize + x + 1))
    sum += term
  }
  return sum
}

function requireArguments(found: number, { lotSize, defectives, sampleSize }: Draw): void {
  requireCount(lotSize, 'lot size')
  requireCountWithin(defectives, 'number of defectives in the lot', lotSize, 'lot size')
  requireCountWithin(sampleSize, 'sample size', lotSize, 'lot size')
  requireCount(found, 'number of defectives found')
}
