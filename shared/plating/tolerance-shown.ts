import { mean, standardDeviation } from '@/shared/statistics/sample-moments'
import { normalQuantile } from '@/shared/statistics/distributions/normal'
import { oneSidedToleranceFactor } from '@/shared/statistics/tolerance/one-sided-factor'
import type { ToleranceContent } from '@/shared/statistics/tolerance/tolerance-content'
import { memoByText, memory } from '@/shared/memo'

/** What readings show of a share of the population against one limit. */
export interface ToleranceShown {
  readonly readings: number
  readonly mean: number
  readonly standardDeviation: number
  /** Undefined for a single reading, which shows no spread. */
  readonly factor: number | undefined
  readonly bound: number | undefined
  /**
   * `shown`: the share lies inside with the confidence asked. `too few`: the
   * readings would do, were there more of them. `outside`: even endless readings
   * with this mean and spread would not do.
   */
  readonly outcome: 'shown' | 'too few' | 'outside'
  /** With the same mean and spread, this many readings would show it. */
  readonly enough: number | undefined
}

export interface ToleranceLimit {
  readonly value: number
  readonly side: 'lower' | 'upper'
}

/** More readings than anyone takes: beyond them "more readings" is no advice. */
const MOST_READINGS = 10_000

/**
 * Judges readings of a normal population against one limit by a one-sided
 * tolerance bound, mean ∓ k·s. Units: those of the readings.
 * Throws RangeError without a reading or for a coverage or confidence not strictly between 0 and 1.
 * Source: NIST/SEMATECH e-Handbook 7.2.6.3 (noncentral t).
 */
export const toleranceShown = (
  readings: readonly number[],
  limit: ToleranceLimit,
  content: ToleranceContent,
): ToleranceShown =>
  known(readings, [limit.value, limit.side, content.coverage, content.confidence], () =>
    computeShown(readings, limit, content),
  )

const known = memory<readonly number[], ToleranceShown>(4)

function computeShown(
  readings: readonly number[],
  limit: ToleranceLimit,
  content: ToleranceContent,
): ToleranceShown {
  const centre = mean(readings)
  const spread = readings.length < 2 ? Number.NaN : standardDeviation(readings)
  const room = limit.side === 'lower' ? centre - limit.value : limit.value - centre
  const base = { readings: readings.length, mean: centre, standardDeviation: spread }
  if (readings.length < 2) {
    const outcome = room >= 0 ? 'too few' : 'outside'
    return { ...base, factor: undefined, bound: undefined, outcome, enough: undefined }
  }
  const factor = rememberedFactor(readings.length, content)
  const bound = limit.side === 'lower' ? centre - factor * spread : centre + factor * spread
  const inside = limit.side === 'lower' ? bound >= limit.value : bound <= limit.value
  if (inside) return { ...base, factor, bound, outcome: 'shown', enough: readings.length }
  const enough = readingsEnough(room / spread, readings.length, content)
  return { ...base, factor, bound, outcome: enough === undefined ? 'outside' : 'too few', enough }
}

/** The least number of readings whose factor is at most so many standard deviations. */
function readingsEnough(roomInSpreads: number, from: number, content: ToleranceContent): number | undefined {
  if (!(roomInSpreads > normalQuantile(content.coverage))) return undefined
  const isEnough = (readings: number) => rememberedFactor(readings, content) <= roomInSpreads
  let short = from
  let enough = from * 2
  while (!isEnough(enough)) {
    if (enough >= MOST_READINGS) return undefined
    short = enough
    enough = Math.min(MOST_READINGS, enough * 2)
  }
  while (enough - short > 1) {
    const middle = Math.floor((short + enough) / 2)
    if (isEnough(middle)) enough = middle
    else short = middle
  }
  return enough
}

/** The factor costs a fifth of a millisecond and is asked for again and again. */
const rememberedFactor = memoByText(
  5000,
  (readings: number, { coverage, confidence }: ToleranceContent) => `${readings} ${coverage} ${confidence}`,
  oneSidedToleranceFactor,
)
