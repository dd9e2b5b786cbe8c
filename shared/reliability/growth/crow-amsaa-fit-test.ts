import type { Interval } from '@/shared/statistics/intervals/interval'
import { chiSquareQuantile } from '@/shared/statistics/distributions/chi-square'
import { requireCount, requireOpenFraction } from '@/shared/statistics/argument-checks'

/** Whether failure times lie as a power law has them. */
export interface GrowthFitTest {
  readonly statistic: number
  /** Exceeded by one series in ten that follows a power law. */
  readonly critical: number
  readonly fits: boolean
}

/**
 * Least failures, and the statistic that one series in ten exceeds. Computed by
 * simulation of 60,000 series and more, three digits; MIL-HDBK-189 prints such a
 * table, alike as far as remembered. Between two rows the smaller is taken.
 */
const EXCEEDED_BY_A_TENTH = [
  [100, 0.175],
  [60, 0.174],
  [30, 0.173],
  [20, 0.171],
  [15, 0.169],
  [10, 0.167],
  [8, 0.166],
  [6, 0.162],
  [5, 0.16],
  [3, 0.154],
] as const

/**
 * Cramér–von Mises test of the power law, for a test that ended at a set time.
 * Undefined with fewer than three failures. Source: L. H. Crow 1974, as in
 * MIL-HDBK-189 (from memory).
 */
export function growthFitTest(times: readonly number[], end: number): GrowthFitTest | undefined {
  const count = times.length
  const critical = EXCEEDED_BY_A_TENTH.find(([min]) => count >= min)?.[1]
  const logs = times.reduce((sum, time) => sum + Math.log(end / time), 0)
  if (critical === undefined || !(logs > 0)) return undefined
  const shape = (count - 1) / logs
  const statistic = times.reduce(
    (sum, time, index) => sum + ((time / end) ** shape - (2 * index + 1) / (2 * count)) ** 2,
    1 / (12 * count),
  )
  return { statistic, critical, fits: statistic <= critical }
}

/**
 * Two-sided bounds of the power law's shape for a test that ended at a set time:
 * 2·Σ ln(T/t)·β is distributed as χ² with twice the failures. Below 1 throughout,
 * failures grow rarer. Errors: RangeError without a failure before the end, or unless the confidence lies between 0 and 1.
 * Source: L. H. Crow 1974, as in MIL-HDBK-189 (from memory).
 */
export function growthShapeInterval(times: readonly number[], end: number, confidence: number): Interval {
  requireOpenFraction(confidence, 'confidence')
  requireCount(times.length, 'number of failures', 1)
  const logs = times.reduce((sum, time) => sum + Math.log(end / time), 0)
  const at = (probability: number): number => chiSquareQuantile(probability, 2 * times.length) / (2 * logs)
  return { lower: at((1 - confidence) / 2), upper: at((1 + confidence) / 2) }
}
