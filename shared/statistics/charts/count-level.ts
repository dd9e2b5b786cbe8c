import { requireNotNegative } from '@/shared/statistics/argument-checks'
import { baselinePoints, limitsOrigin } from './baseline'
import type { Baseline, KnownLevel } from './baseline'
import type { LimitsOrigin } from './chart'

/** The level of a chart of counts: frozen, or all that was found over all that was looked at. */
export function countLevel(
  found: readonly number[],
  lookedAt: readonly number[],
  baseline: Baseline<KnownLevel>,
): { level: number; limits: LimitsOrigin } {
  if (found.length === 0) throw new RangeError('A chart needs at least one count.')
  if (baseline.kind === 'frozen') {
    requireNotNegative(baseline.centre, 'frozen centre line')
    return { level: baseline.centre, limits: limitsOrigin(baseline, 0) }
  }
  const used = baselinePoints(found.length, baseline)
  const total = (counts: readonly number[]): number => used.reduce((sum, index) => sum + counts[index]!, 0)
  return { level: total(found) / total(lookedAt), limits: limitsOrigin(baseline, used.length) }
}

/** One size for all samples, or one a sample. */
export function sizesFor(sizes: number | readonly number[], samples: number): readonly number[] {
  if (typeof sizes === 'number') return new Array<number>(samples).fill(sizes)
  if (sizes.length !== samples)
    throw new RangeError(`There are ${samples} counts but ${sizes.length} sample sizes.`)
  return sizes
}
