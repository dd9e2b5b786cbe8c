import type { Baseline, FrozenBaseline, KnownProcess } from '@/shared/statistics/charts/baseline'
import type { PhaseStart } from '@/shared/statistics/charts/phases'
import { estimateFromMovingRange } from '@/shared/statistics/charts/process-estimate'
import type { ChartChoice } from './chart-choice'
import { FEWEST_TO_CHART, pointsOn } from './chart-stretches'
import type { Series } from '@/shared/logs/log-series'

/** Held limits where the baseline days hold enough of this stretch, else estimated from all of it. */
export function baselineFor(
  part: readonly number[],
  start: PhaseStart,
  { instants, log }: Pick<Series, 'instants' | 'log'>,
  { baseline }: ChartChoice,
): Baseline<KnownProcess> {
  if (!baseline) return { kind: 'estimated' }
  const days = pointsOn({ instants: instants.slice(start.from, start.from + part.length), log }, baseline)
  if (days.to - days.from < FEWEST_TO_CHART) return { kind: 'estimated' }
  const { centre, processSigma, pointsUsed } = estimateFromMovingRange(part, { kind: 'estimated', ...days })
  return held({ centre, processSigma }, `${pointsUsed} readings`, baseline)
}

/** Limits that rest on those days, and are held. */
export const held = <Known>(
  known: Known,
  points: string,
  { from, to }: { readonly from: string; readonly to: string },
): FrozenBaseline<Known> => ({ kind: 'frozen', setBy: `${points} of ${from} to ${to}`, ...known })
