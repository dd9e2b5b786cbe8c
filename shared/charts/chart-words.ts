import { CHART_OPTIONS, GROUPING_OPTIONS } from '@/shared/plan/parameters/control-charts'
import type { ChartPhase } from '@/shared/statistics/charts/chart'
import type { ChartChoice, ChosenChart } from './chart-choice'
import { LOG_CHARTS } from './kinds/log-charts'
import { PANEL_KINDS, type PanelKindKey } from './kinds/panel-kinds'

/** The chart as a specification calls it. */
export const chartLabel = (chart: ChosenChart): string => labelIn(CHART_OPTIONS, chart)

const labelIn = (options: readonly { value: string; label: string }[], value: string): string =>
  options.find((option) => option.value === value)?.label ?? value

/** The words with a small first letter; X̄–R and UTC stay as they are. */
export const withinASentence = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1)

/** "Means and ranges of subgroups (X̄–R): 5 readings, so many in a row". */
export function chartInWords(choice: ChartChoice): string {
  const chart = chartLabel(choice.chart)
  if (!LOG_CHARTS[choice.chart].ofSubgroups) return chart
  return `${chart}: ${choice.subgroup} readings a subgroup, ${withinASentence(labelIn(GROUPING_OPTIONS, choice.grouping))}`
}

/** Where the limits of a stretch come from: estimated from these very points, or held since. */
export function limitsInWords({ limits, from, to }: ChartPhase): string {
  if (limits.kind === 'frozen') return `held, from ${limits.setBy}`
  if (limits.pointsUsed === 0) return `none yet: ${to - from} points are too few`
  return `estimated from these ${limits.pointsUsed} points`
}

/** What a panel plots, as its axis is called. */
export const plotted = (kind: PanelKindKey, label: string, { subgroup }: ChartChoice): string =>
  PANEL_KINDS[kind].plotted(label, subgroup)
