import { requirePositive } from '@/shared/statistics/argument-checks'
import { fitLine } from '@/shared/statistics/regression/straight-line'
import { requireFailureTimes } from './growth'
import type { GrowthState } from './growth'

/** Cumulative mean time between failures = t^α ÷ A, a straight line on logarithmic paper. */
export interface DuaneFit extends GrowthState {
  /** α: 0 no growth; 0.3 to 0.6 is usual. */
  readonly growthSlope: number
  /** A. */
  readonly scale: number
  readonly rSquared: number
}

/**
 * Reliability growth by Duane's plot, least squares of ln(t/i) on ln t. Needs
 * three failures. Source: NIST/SEMATECH e-Handbook 8.1.9.2.
 */
export function duaneGrowth(failureTimes: readonly number[]): DuaneFit {
  requireFailureTimes(failureTimes, 3)
  const { slope, intercept, rSquared } = fitLine(
    failureTimes.map(Math.log),
    failureTimes.map((time, index) => Math.log(time / (index + 1))),
  )
  const scale = Math.exp(-intercept)
  const cumulativeMeanTime = failureTimes.at(-1)! ** slope / scale
  return {
    growthSlope: slope,
    scale,
    rSquared,
    cumulativeMeanTime,
    currentMeanTime: cumulativeMeanTime / (1 - slope),
  }
}

/** When the cumulative mean time will reach a target; Infinity when nothing grows. */
export function duaneTimeToReach(
  { growthSlope, scale }: Pick<DuaneFit, 'growthSlope' | 'scale'>,
  targetMeanTime: number,
): number {
  requirePositive(targetMeanTime, 'mean time to reach')
  return growthSlope > 0 ? (targetMeanTime * scale) ** (1 / growthSlope) : Infinity
}
