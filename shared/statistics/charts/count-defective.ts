import { ESTIMATE_FROM_ALL } from './baseline'
import type { Baseline, KnownLevel } from './baseline'
import type { Chart } from './chart'
import { countLevel, sizesFor } from './count-level'
import { drawLimits } from './draw-limits'
import { checkSamples } from './proportion-defective'

/**
 * np chart: number of defective pieces in samples of one size. A frozen centre
 * is a number of pieces a sample. Source: NIST/SEMATECH e-Handbook 6.3.3.2.
 */
export function countDefectiveChart(
  defective: readonly number[],
  sampleSize: number,
  baseline: Baseline<KnownLevel> = ESTIMATE_FROM_ALL,
): Chart {
  checkSamples(defective, sizesFor(sampleSize, defective.length))
  const { level, limits } = countLevel(defective, sizesFor(1, defective.length), baseline)
  if (level > sampleSize)
    throw new RangeError(`A centre of ${level} defectives does not fit samples of ${sampleSize}.`)
  return drawLimits({
    kind: 'count-defective',
    behaviour: 'skewed',
    values: defective,
    centre: level,
    sigma: Math.sqrt(level * (1 - level / sampleSize)),
    floor: 0,
    ceiling: sampleSize,
    limits,
  })
}
