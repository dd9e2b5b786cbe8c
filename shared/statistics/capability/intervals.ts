import { requireCount, requireOpenFraction, requirePositive } from '@/shared/statistics/argument-checks'
import { chiSquareQuantile } from '@/shared/statistics/distributions/chi-square'
import { normalQuantile } from '@/shared/statistics/distributions/normal'
import type { Interval } from '@/shared/statistics/intervals/interval'
import { requireFinite } from '@/shared/statistics/reading-checks'

/** What an estimated index rests on. */
export type IndexBasis = {
  readings: number
  /** Of the estimate of sigma; readings − 1 when it is the standard deviation of them all. */
  degreesOfFreedom: number
}

/**
 * Two-sided interval of Cp (or Pp), exact for normal readings.
 * Source: NIST/SEMATECH e-Handbook 6.1.6 (formula from memory).
 */
export function cpInterval(cp: number, { degreesOfFreedom }: IndexBasis, confidence: number): Interval {
  requirePositive(cp, 'index Cp')
  return spreadInterval(cp, degreesOfFreedom, confidence)
}

/**
 * Two-sided interval of Cpk (or Ppk), for normal readings, by a normal
 * approximation of its sampling error. Source: A. F. Bissell, Applied
 * Statistics 39 (1990) 331; NIST/SEMATECH e-Handbook 6.1.6 (from memory).
 */
export function cpkInterval(cpk: number, basis: IndexBasis, confidence: number): Interval {
  requireOpenFraction(confidence, 'confidence')
  const reach = normalQuantile((1 + confidence) / 2) * cpkStandardError(cpk, basis)
  return { lower: cpk - reach, upper: cpk + reach }
}

/** One-sided: Cpk is at least this, with the stated confidence. Same source. */
export function cpkLowerBound(cpk: number, basis: IndexBasis, confidence: number): number {
  requireOpenFraction(confidence, 'confidence')
  return cpk - normalQuantile(confidence) * cpkStandardError(cpk, basis)
}

/**
 * Two-sided interval of Cpm; `offTargetSigmas` is (mean − target) ÷ sigma.
 * Source: R. A. Boyles, Journal of Quality Technology 23 (1991) 17 (from memory).
 */
export function cpmInterval(
  cpm: number,
  offTargetSigmas: number,
  { readings }: Pick<IndexBasis, 'readings'>,
  confidence: number,
): Interval {
  requirePositive(cpm, 'index Cpm')
  requireCount(readings, 'number of readings', 2)
  const square = offTargetSigmas ** 2
  return spreadInterval(cpm, (readings * (1 + square) ** 2) / (1 + 2 * square), confidence)
}

function cpkStandardError(cpk: number, { readings, degreesOfFreedom }: IndexBasis): number {
  requireFinite(cpk, 'index Cpk')
  requireCount(readings, 'number of readings', 2)
  requirePositive(degreesOfFreedom, 'degrees of freedom')
  return Math.sqrt(1 / (9 * readings) + cpk ** 2 / (2 * degreesOfFreedom))
}

function spreadInterval(index: number, degreesOfFreedom: number, confidence: number): Interval {
  requirePositive(degreesOfFreedom, 'degrees of freedom')
  requireOpenFraction(confidence, 'confidence')
  const oneTail = (1 - confidence) / 2
  const factor = (tail: number): number =>
    Math.sqrt(chiSquareQuantile(tail, degreesOfFreedom) / degreesOfFreedom)
  return { lower: index * factor(oneTail), upper: index * factor(1 - oneTail) }
}
