import type { Baseline, KnownProcess } from '@/shared/statistics/charts/baseline'
import type { Chart } from '@/shared/statistics/charts/chart'
import { chartInPhases, type PhaseStart } from '@/shared/statistics/charts/phases'
import type { SubgroupCharts, Subgroups } from '@/shared/statistics/charts/subgroups'
import { withoutLimits } from '@/shared/statistics/charts/without-limits'
import type { RunRule } from '@/shared/statistics/run-rules/rule'
import type { ChartChoice } from '../chart-choice'
import { FEWEST_TO_CHART, groupsOf, phaseStarts, pointsOn } from '../chart-stretches'
import type { Series } from '@/shared/logs/log-series'
import { held } from '../fixed-limits'
import type { Panels } from './log-chart-kind'
import { panelOfChart } from './panel-of-chart'

/** The means of whole subgroups, and by `chartsOf` one measure of their spread; limits rest on as many readings as single ones do. */
export function subgroupPanels(
  spread: 'range' | 'deviation',
  chartsOf: (part: Subgroups, baseline: Baseline<KnownProcess>) => SubgroupCharts,
  series: Series,
  choice: ChartChoice,
  rules: readonly RunRule[],
): Panels {
  const { instants, groups, leftOut } = groupsOf(series, choice)
  if (groups.length === 0) return { panels: [], leftOut }
  const fewest = Math.max(2, Math.ceil(FEWEST_TO_CHART / choice.subgroup))
  const starts = phaseStarts({ instants, log: series.log }, choice.phases)
  const baselineOf = (part: Subgroups, start: PhaseStart): Baseline<KnownProcess> => {
    if (!choice.baseline) return { kind: 'estimated' }
    const days = pointsOn(
      { instants: instants.slice(start.from, start.from + part.length), log: series.log },
      choice.baseline,
    )
    if (days.to - days.from < fewest) return { kind: 'estimated' }
    const { process } = chartsOf(part, { kind: 'estimated', ...days })
    return held(process, `${days.to - days.from} subgroups`, choice.baseline)
  }
  const drawn = (which: 'means' | 'spreads'): Chart =>
    chartInPhases(groups, starts, (part, start) => {
      if (part.length >= fewest) return chartsOf(part, baselineOf(part, start))[which]
      // Any limits will do: only the points are kept.
      const points = chartsOf(part, { kind: 'frozen', setBy: '', centre: 0, processSigma: 1 })[which]
      return withoutLimits(points.kind, points.values)
    })
  return {
    panels: [
      panelOfChart('mean', drawn('means'), instants, rules),
      panelOfChart(spread, drawn('spreads'), instants, rules),
    ],
    leftOut,
  }
}
