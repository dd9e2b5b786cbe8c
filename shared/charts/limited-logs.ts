import { chartPhases, chartRules, processCharts } from '@/shared/plan/parameters/control-charts'
import { LEVEL_CHARACTERISTICS, type LevelCharacteristic } from '@/shared/logs/level-characteristics'
import type { LogSeries } from '@/shared/logs/log-series'
import { allLogs } from '@/shared/rules/record-source'
import { chartResets } from '@/shared/rules/log-record-sources'
import { optional, type Inputs } from '@/shared/rules/rule'
import { specifiedChart } from './chart-choice'
import type { Charting } from './log-chart'
import { USUAL_RUN_RULES } from './run-rule-sets'
import { chartedReads, chartedSeries } from '@/shared/logs/charted-series'
import type { ProcessWindow } from '@/shared/logs/logged-window'
import { windowOf, windowReads } from '@/shared/logs/log-window'

/** What the window of every logged quantity, the quantity itself and its resets follow from. */
export const limitedReads = {
  ...windowReads,
  ...chartedReads,
  phases: optional(chartPhases),
  resets: chartResets,
  charts: optional(processCharts),
  rules: optional(chartRules),
  logs: allLogs,
}

/** A log in the quantity that the specification limits, with its window. */
export interface LimitedLog {
  readonly characteristic: LevelCharacteristic
  readonly what: string
  readonly series: LogSeries
  readonly window: ProcessWindow
  /** The chart and the run rules that the programme chose, with known and lasting changes. */
  readonly charting: Charting
}

const WHAT: Readonly<Record<LevelCharacteristic, string>> = {
  'flux-density': 'flux density',
  'flux-acid-number': 'flux acid number',
  'bath-temperature': 'bath temperature',
  'wave-contact': 'dwell in the wave',
  'wave-geometry': 'immersion in the wave',
  'wave-preheat': 'preheat',
}

/** The logs whose window follows from the specification, in the quantity that is limited. */
export function limitedLogs(inputs: Inputs<typeof limitedReads>): LimitedLog[] {
  return LEVEL_CHARACTERISTICS.flatMap((key) => {
    const window = windowOf(key, inputs)
    if (!window) return []
    return (inputs.logs.get(key) ?? []).flatMap((log) => {
      const series = chartedSeries(log, inputs)?.series
      const charting = {
        choice: specifiedChart(log, inputs.charts, inputs.phases, inputs.resets),
        rules: inputs.rules ?? USUAL_RUN_RULES,
      }
      return series ? [{ characteristic: key, what: WHAT[key], series, window, charting }] : []
    })
  })
}
