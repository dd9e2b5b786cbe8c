import type { Readings } from '@/shared/statistics/reading-checks'
import { ESTIMATE_FROM_ALL, limitsOrigin } from './baseline'
import type { Baseline, KnownProcess } from './baseline'
import type { Chart } from './chart'
import { chartConstants } from './constants'
import { drawLimits } from './draw-limits'
import { estimateFromMovingRange } from './process-estimate'

const { d2, d3 } = chartConstants(2)

/**
 * Moving-range chart: the change from each reading to the next, limits from D3
 * and D4 at n = 2. Units: those of the readings.
 * Source: NIST/SEMATECH e-Handbook 6.3.2.2.
 */
export function movingRangeChart(
  values: Readings,
  baseline: Baseline<KnownProcess> = ESTIMATE_FROM_ALL,
): Chart {
  const { processSigma, pointsUsed } = estimateFromMovingRange(values, baseline)
  const ranges = new Float64Array(values.length - 1)
  for (let index = 0; index < ranges.length; index++)
    ranges[index] = Math.abs(values[index + 1]! - values[index]!)
  return drawLimits({
    kind: 'moving-range',
    behaviour: 'correlated',
    values: ranges,
    firstPosition: 1,
    centre: d2 * processSigma,
    sigma: d3 * processSigma,
    floor: 0,
    limits: limitsOrigin(baseline, pointsUsed),
  })
}
