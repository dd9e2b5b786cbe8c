import type { Readings } from '@/shared/statistics/reading-checks'
import { ESTIMATE_FROM_ALL, limitsOrigin } from './baseline'
import type { Baseline, KnownProcess } from './baseline'
import type { Chart } from './chart'
import { drawLimits } from './draw-limits'
import { estimateFromMovingRange } from './process-estimate'

/**
 * Individuals chart: single readings in order, limits three sigma about the
 * mean, sigma from the moving range. Units: those of the readings.
 * Source: NIST/SEMATECH e-Handbook 6.3.2.2.
 */
export function individualsChart(
  values: Readings,
  baseline: Baseline<KnownProcess> = ESTIMATE_FROM_ALL,
): Chart {
  const { centre, processSigma, pointsUsed } = estimateFromMovingRange(values, baseline)
  return drawLimits({
    kind: 'individuals',
    behaviour: 'near-normal',
    values,
    centre,
    sigma: processSigma,
    limits: limitsOrigin(baseline, pointsUsed),
  })
}
