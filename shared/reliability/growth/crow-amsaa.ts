import { requirePositive } from '@/shared/statistics/argument-checks'
import { requireFailureTimes } from './growth'
import type { GrowthState } from './growth'

export interface CrowAmsaaOptions {
  /** Time at which the test was ended as planned; left out, it ended with the last failure. */
  readonly endedAt?: number
  /** Unbiased corrects the slope for few failures. */
  readonly estimate: 'maximum likelihood' | 'unbiased'
}

/** Failures expected by t = λ·t^β: a power-law Poisson process. */
export interface CrowAmsaaFit extends GrowthState {
  /** β: below 1 failures grow rarer. */
  readonly shape: number
  /** λ. */
  readonly scale: number
  /** 1 − β. */
  readonly growth: number
  readonly estimate: CrowAmsaaOptions['estimate']
}

/**
 * Reliability growth by a power law. Needs two failures (three for the unbiased
 * slope of a test that a failure ended). Source: L. H. Crow 1974, as in
 * MIL-HDBK-189 (from memory); unbiased form of a time-ended test NIST/SEMATECH
 * e-Handbook 8.4.5.2.
 */
export function crowAmsaaGrowth(
  failureTimes: readonly number[],
  { endedAt, estimate }: CrowAmsaaOptions,
): CrowAmsaaFit {
  requireFailureTimes(failureTimes, 2)
  const failures = failureTimes.length
  const last = failureTimes[failures - 1]!
  const end = endedAt ?? last
  if (!(end >= last && end < Infinity))
    throw new RangeError(`The test ended at ${end}, before its last failure at ${last}.`)
  const logs = failureTimes.reduce((sum, time) => sum + Math.log(end / time), 0)
  const shape = (failures - lost(estimate, endedAt !== undefined)) / logs
  if (!(shape > 0))
    throw new RangeError('The unbiased slope of a test ended by a failure needs three failures.')
  const cumulativeMeanTime = end / failures
  return {
    shape,
    scale: failures / end ** shape,
    growth: 1 - shape,
    estimate,
    cumulativeMeanTime,
    currentMeanTime: cumulativeMeanTime / shape,
  }
}

/** What the correction takes off the number of failures. */
function lost(estimate: CrowAmsaaOptions['estimate'], endedByTime: boolean): number {
  if (estimate === 'maximum likelihood') return 0
  return endedByTime ? 1 : 2
}

/** When the cumulative mean time will reach a target; Infinity when nothing grows. */
export function crowAmsaaTimeToReach(
  { shape, scale }: Pick<CrowAmsaaFit, 'shape' | 'scale'>,
  targetMeanTime: number,
): number {
  requirePositive(targetMeanTime, 'mean time to reach')
  return shape < 1 ? (scale * targetMeanTime) ** (1 / (1 - shape)) : Infinity
}
