import { requireCount } from '@/shared/statistics/argument-checks'
import { ESTIMATE_FROM_ALL } from './baseline'
import type { Baseline, KnownLevel } from './baseline'
import type { Chart } from './chart'
import { countLevel, sizesFor } from './count-level'
import { drawLimits } from './draw-limits'

/**
 * c chart: defects in inspection units of one size, as a Poisson count.
 * Source: NIST/SEMATECH e-Handbook 6.3.3.1.
 */
export function defectCountChart(
  defects: readonly number[],
  baseline: Baseline<KnownLevel> = ESTIMATE_FROM_ALL,
): Chart {
  defects.forEach((found, index) => requireCount(found, `count of unit ${index + 1}`))
  const { level, limits } = countLevel(defects, sizesFor(1, defects.length), baseline)
  return drawLimits({
    kind: 'defect-count',
    behaviour: 'skewed',
    values: defects,
    centre: level,
    sigma: Math.sqrt(level),
    floor: 0,
    limits,
  })
}
