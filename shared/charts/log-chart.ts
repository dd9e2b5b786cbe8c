import { chartPhases, chartRules, processCharts } from '@/shared/plan/parameters/control-charts'
import type { Parameter } from '@/shared/plan/parameter'
import { recordsOfKind } from '@/shared/records/records-of-kind'
import { findCharacteristic } from '@/shared/records/characteristics'
import type { Log } from '@/shared/records/log'
import type { Facts } from '@/shared/rules/facts'
import { specifiedChart, type ChartChoice } from './chart-choice'
import { chartedInputs, chartedSeries, type ChartedSeries } from '@/shared/logs/charted-series'
import type { ChartPanel, PanelSignal } from './chart-panel'
import { panelsOf } from './chart-panels'
import { FEWEST_TO_CHART } from './chart-stretches'
import type { Series } from '@/shared/logs/log-series'
import type { Panels } from './kinds/log-chart-kind'
import { PANEL_KINDS } from './kinds/panel-kinds'
import type { ProcessWindow } from '@/shared/logs/logged-window'
import { windowOfLog } from '@/shared/logs/log-window'
import { RUN_RULE_SETS, USUAL_RUN_RULES, type RunRuleSet } from './run-rule-sets'
import { memory } from '@/shared/memo'

/** A signal of a log's chart, told by the reading that completed the pattern. */
export interface LogSignal {
  readonly chartRule: string
  readonly message: string
  /** Epoch milliseconds, and its text as an answer names it. */
  readonly instant: number
  readonly readingAt: string
  /** Of the plotted point, in the unit of what is charted. */
  readonly value: number
  /** Whether the gate asks for an answer. */
  readonly asked: boolean
}

/** What to chart and by which rules. */
export interface Charting {
  readonly choice: ChartChoice
  readonly rules: RunRuleSet
}

/** All that a screen draws of one log. */
export interface LogChart extends Charting, ChartedSeries {
  /** None while there are too few readings, or they are all alike. */
  readonly panels: readonly ChartPanel[]
  readonly leftOut: number
  readonly signals: readonly LogSignal[]
  readonly window: ProcessWindow | undefined
}

/** An instant as an answer names it: 2026-03-31T07:40:00Z. */
export const readingText = (instant: number): string => new Date(instant).toISOString().replace('.000Z', 'Z')

/** Enough readings, and not all alike. */
export const canBeCharted = (values: readonly number[]): boolean =>
  values.length >= FEWEST_TO_CHART && values.some((value) => value !== values[0])

const valueOf = <T>({ key }: Parameter<T>, facts: Facts | undefined): T | undefined =>
  facts?.values.get(key) as T | undefined

/** The run rules that the specification wants answered. */
export const specifiedRules = (facts: Facts | undefined): RunRuleSet =>
  valueOf(chartRules, facts) ?? USUAL_RUN_RULES

/** How the specification wants a log charted. */
export const specifiedCharting = (log: Log, facts: Facts | undefined): Charting => ({
  choice: specifiedChart(
    log,
    valueOf(processCharts, facts),
    valueOf(chartPhases, facts),
    facts ? recordsOfKind(facts.records, 'chart-reset') : [],
  ),
  rules: specifiedRules(facts),
})

/**
 * The chart of a log with its signals: as specified when the programme's facts
 * are given, or as asked for instead, and the specified window in the unit of
 * what is charted. Throws RangeError on a characteristic that is not known.
 */
export function logChart(log: Log, facts?: Facts, instead?: Charting): LogChart {
  const characteristic = findCharacteristic(log.characteristic)
  if (!characteristic) throw new RangeError(`There is no process characteristic ${log.characteristic}.`)
  const charting = instead ?? specifiedCharting(log, facts)
  const charted = chartedSeries(log, chartedInputs(facts)) ?? NOTHING_CHARTED(log)
  const { panels, leftOut } = canBeCharted(charted.series.values)
    ? drawn(charted.series, charting)
    : NO_PANELS
  return {
    ...charting,
    ...charted,
    panels,
    leftOut,
    signals: signalsOf(panels, charting.rules),
    window: facts && windowOfLog(log.characteristic, facts),
  }
}

const NO_PANELS: Panels = { panels: [], leftOut: 0 }
const NOTHING_CHARTED = (log: Log): ChartedSeries => ({
  series: { log, instants: [], values: [], rows: [] },
  label: log.characteristic,
  unit: '1',
})

/** Signals of all panels in the order in which they would have sounded. */
export const signalsOf = (panels: readonly ChartPanel[], rules: RunRuleSet): LogSignal[] =>
  panels
    .flatMap((panel) =>
      panel.signals.map((signal): LogSignal => {
        const { chartRule, message, point, line } = signal
        const instant = panel.instants[point]!
        return {
          chartRule,
          message: `${PANEL_KINDS[panel.kind].signalPrefix}${message}`,
          instant,
          readingAt: readingText(instant),
          value: panel.lines[line]![point]!,
          asked: isAsked(signal, panel, rules),
        }
      }),
    )
    .sort((one, other) => one.instant - other.instant)

/** Whether the gate asks for an answer to a signal of a panel: of run rules to some, by what the specification wants. */
export const isAsked = ({ ruleId }: PanelSignal, panel: ChartPanel, rules: RunRuleSet): boolean =>
  panel.asked &&
  (!PANEL_KINDS[panel.kind].byRunRules || RUN_RULE_SETS[rules].asked.some(({ id }) => id === ruleId))

/** The signals that must be answered: less work than the whole chart where only limits are asked about. */
export function askedSignals(series: Series, charting: Charting): readonly LogSignal[] {
  if (!canBeCharted(series.values)) return []
  return signalsOf(drawn(series, charting, true).panels, charting.rules).filter(({ asked }) => asked)
}

/** Charts are remembered for as long as the charted values are, by how they were asked for. */
const remembered = memory<Series['values'], Panels>(24)
function drawn(series: Series, { choice, rules }: Charting, askedOnly = false): Panels {
  const set = RUN_RULE_SETS[rules]
  const asked = JSON.stringify([choice, askedOnly ? rules : set.name, askedOnly])
  return remembered(series.values, [asked], () =>
    panelsOf(series, choice, askedOnly ? set.asked : set.drawn, askedOnly),
  )
}
