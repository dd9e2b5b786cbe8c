import { requireCount, requirePositive } from '@/shared/statistics/argument-checks'
import { ESTIMATE_FROM_ALL } from './baseline'
import type { Baseline, KnownLevel } from './baseline'
import type { Chart } from './chart'
import { countLevel, sizesFor } from './count-level'
import { drawLimits } from './draw-limits'

/**
 * u chart: defects per inspection unit, for samples of differing size (boards,
 * hundreds of joints, square metres). Limits follow each sample's size.
 * Source: NIST/SEMATECH e-Handbook 6.3.3.1 (Poisson counts); form from memory.
 */
export function defectsPerUnitChart(
  defects: readonly number[],
  units: number | readonly number[],
  baseline: Baseline<KnownLevel> = ESTIMATE_FROM_ALL,
): Chart {
  const sizes = sizesFor(units, defects.length)
  defects.forEach((found, index) => {
    requireCount(found, `count of sample ${index + 1}`)
    requirePositive(sizes[index]!, `size of sample ${index + 1}`)
  })
  const { level, limits } = countLevel(defects, sizes, baseline)
  return drawLimits({
    kind: 'defects-per-unit',
    behaviour: 'skewed',
    values: defects.map((found, index) => found / sizes[index]!),
    centre: level,
    sigma: sizes.map((size) => Math.sqrt(level / size)),
    floor: 0,
    limits,
  })
}
