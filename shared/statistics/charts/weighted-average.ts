import { requirePositive } from '@/shared/statistics/argument-checks'
import { ESTIMATE_FROM_ALL, limitsOrigin } from './baseline'
import type { Baseline, KnownProcess } from './baseline'
import type { Chart } from './chart'
import { drawLimits, LIMIT_WIDTH_SIGMAS } from './draw-limits'
import { estimateFromMovingRange } from './process-estimate'

export type WeightedAverageOptions = {
  /** Weight of the newest reading, above 0, at most 1; 0.2 to 0.3 is usual. */
  weight: number
  /** Exact limits widen over the first points; steady ones are the value they settle at. */
  limits: 'time-varying' | 'steady'
  baseline?: Baseline<KnownProcess>
  limitWidth?: number
}

/**
 * Exponentially weighted moving average of single readings, started at the
 * centre: each point is weight × reading + (1 − weight) × previous point.
 * Slow drift shows earlier than on an individuals chart. Units: those of the
 * readings. Source: NIST/SEMATECH e-Handbook 6.3.2.4; Roberts 1959 (from memory).
 */
export function weightedAverageChart(values: readonly number[], options: WeightedAverageOptions): Chart {
  const { weight, baseline = ESTIMATE_FROM_ALL, limitWidth = LIMIT_WIDTH_SIGMAS } = options
  if (!(weight > 0 && weight <= 1))
    throw new RangeError(`The weight of the newest reading must be above 0 and at most 1; it is ${weight}.`)
  requirePositive(limitWidth, 'width of the limits')
  const { centre, processSigma, pointsUsed } = estimateFromMovingRange(values, baseline)
  const steady = processSigma * Math.sqrt(weight / (2 - weight))
  let average = centre
  return drawLimits({
    kind: 'weighted-average',
    behaviour: 'correlated',
    values: values.map((value) => (average += weight * (value - average))),
    centre,
    sigma:
      options.limits === 'steady'
        ? steady
        : values.map((_, index) => steady * Math.sqrt(1 - (1 - weight) ** (2 * (index + 1)))),
    limitWidth,
    limits: limitsOrigin(baseline, pointsUsed),
  })
}
