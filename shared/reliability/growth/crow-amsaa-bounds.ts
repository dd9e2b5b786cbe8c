import { requireCount, requireOpenFraction, requirePositive } from '@/shared/statistics/argument-checks'
import { normalQuantile } from '@/shared/statistics/distributions/normal'
import type { Interval } from '@/shared/statistics/intervals/interval'
import type { CrowAmsaaFit } from './crow-amsaa'

/** Failures that the power law expects by a time, in the unit of the failure times. */
export const expectedFailures = ({ shape, scale }: Pick<CrowAmsaaFit, 'shape' | 'scale'>, time: number) =>
  scale * time ** shape

interface GrowthSeen {
  readonly fit: Pick<CrowAmsaaFit, 'shape' | 'scale' | 'currentMeanTime'>
  readonly failures: number
  /** Time at which the test ended. */
  readonly end: number
}

/**
 * Two-sided bounds of the failures expected by a time, the logarithm taken as
 * normal. The failures by the end and the slope are independent in Fisher's
 * information, so var(ln N(t)) = (1 + (β·ln(t/T))²)/n. For many failures; with
 * a handful they are rough. Errors: RangeError for a time that is not above zero.
 * Source: Fisher information of the power-law process (L. H. Crow 1974, as in
 * MIL-HDBK-189, from memory; the form with T is worked out from it).
 */
export function expectedFailuresInterval(
  { fit, failures, end }: GrowthSeen,
  time: number,
  confidence: number,
): Interval {
  requirePositive(time, 'time')
  requireCount(failures, 'number of failures', 1)
  const spread = Math.sqrt((1 + (fit.shape * Math.log(time / end)) ** 2) / failures)
  return about(expectedFailures(fit, time), spread, confidence)
}

/**
 * Two-sided bounds of the mean time between failures at the end, likewise:
 * var(ln of it) = 2/n. Source as above.
 */
export function currentMeanTimeInterval(
  { fit, failures }: Pick<GrowthSeen, 'fit' | 'failures'>,
  confidence: number,
): Interval {
  requireCount(failures, 'number of failures', 1)
  return about(fit.currentMeanTime, Math.sqrt(2 / failures), confidence)
}

function about(value: number, spreadOfLog: number, confidence: number): Interval {
  requireOpenFraction(confidence, 'confidence')
  const reach = Math.exp(normalQuantile((1 + confidence) / 2) * spreadOfLog)
  return { lower: value / reach, upper: value * reach }
}
