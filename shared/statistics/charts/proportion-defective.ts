import { requireCount, requireCountWithin } from '@/shared/statistics/argument-checks'
import { ESTIMATE_FROM_ALL } from './baseline'
import type { Baseline, KnownLevel } from './baseline'
import type { Chart } from './chart'
import { countLevel, sizesFor } from './count-level'
import { drawLimits } from './draw-limits'

/**
 * p chart: share of defective pieces in samples that may differ in size.
 * Limits follow each sample's size and stop at 0 and 1.
 * Source: NIST/SEMATECH e-Handbook 6.3.3.2.
 */
export function proportionDefectiveChart(
  defective: readonly number[],
  inspected: number | readonly number[],
  baseline: Baseline<KnownLevel> = ESTIMATE_FROM_ALL,
): Chart {
  const sizes = sizesFor(inspected, defective.length)
  checkSamples(defective, sizes)
  const { level, limits } = countLevel(defective, sizes, baseline)
  if (level > 1) throw new RangeError(`A share of defectives cannot be ${level}.`)
  return drawLimits({
    kind: 'proportion-defective',
    behaviour: 'skewed',
    values: defective.map((found, index) => found / sizes[index]!),
    centre: level,
    sigma: sizes.map((size) => Math.sqrt((level * (1 - level)) / size)),
    floor: 0,
    ceiling: 1,
    limits,
  })
}

/** Whole counts, none larger than its sample. */
export function checkSamples(defective: readonly number[], sizes: readonly number[]): void {
  defective.forEach((found, index) => {
    requireCount(sizes[index]!, `size of sample ${index + 1}`, 1)
    requireCountWithin(found, `count of sample ${index + 1}`, sizes[index]!, 'pieces inspected')
  })
}
