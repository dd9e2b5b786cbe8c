import type { Source } from '@/shared/sources/source'
import type { RunRule } from '@/shared/statistics/run-rules/rule'
import type { ChartChoice } from '../chart-choice'
import type { ChartPanel } from '../chart-panel'
import type { Series } from '@/shared/logs/log-series'

/** One of the charts a log can have: how it is drawn, and in what words. Its label stands in CHART_OPTIONS. */
export interface LogChartKind {
  /** Whether it plots subgroups, whose size and grouping are then asked for. */
  readonly ofSubgroups: boolean
  /** How it comes to its limits. */
  readonly formula: string
  readonly source: Source
  /**
   * Its plots, every stretch with limits of its own: estimated from the stretch,
   * or from the baseline days of the choice and then held. `askedOnly` leaves
   * out a plot that nobody has to answer for.
   */
  panels(series: Series, choice: ChartChoice, rules: readonly RunRule[], askedOnly: boolean): Panels
}

/** The level first; the spread, where the chart has one, second. */
export interface Panels {
  readonly panels: readonly ChartPanel[]
  /** Readings that made up no whole subgroup. */
  readonly leftOut: number
}
