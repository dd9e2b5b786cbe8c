import type { ChartPhase } from '@/shared/statistics/charts/chart'
import type { PanelKindKey } from './kinds/panel-kinds'

/** A signal of one panel, by the point that completed the pattern. */
export interface PanelSignal {
  /** As an answer names it: "western-electric-1", "range:western-electric-1". */
  readonly chartRule: string
  readonly ruleId: string
  readonly message: string
  readonly point: number
  /** The line it is on, counted from 0. */
  readonly line: number
}

/** One plot of a control chart: its points with their instants, and the limits at every point. */
export interface ChartPanel {
  readonly kind: PanelKindKey
  /** Of each point the last reading. */
  readonly instants: readonly number[]
  /** One line, or the two sums. */
  readonly lines: readonly Float64Array[]
  readonly centre: Float64Array
  /** NaN where a stretch has too few readings for limits. */
  readonly lower: Float64Array
  readonly upper: Float64Array
  readonly phases: readonly ChartPhase[]
  readonly signals: readonly PanelSignal[]
  readonly rulesNotRun: readonly { readonly ruleId: string; readonly because: string }[]
  /** Whether a signal here must be answered; a moving range only repeats what its readings say. */
  readonly asked: boolean
}
