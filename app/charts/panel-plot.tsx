import type { ComponentProps } from 'react'
import { ControlPlot } from '@/app/drawing/control-plot'
import { extentOf } from '@/app/drawing/extent'
import type { Numbers } from '@/app/drawing/numbers-table'
import type { RunMark } from '@/app/drawing/run-marks'
import { Moment } from '@/app/ui/date'
import { works } from '@/lib/settings/works'
import { formatQuantity } from '@/shared/quantity/format'
import type { Unit } from '@/shared/quantity/unit'
import type { ChartChoice } from '@/shared/charts/chart-choice'
import type { ChartPanel } from '@/shared/charts/chart-panel'
import { limitsInWords, plotted } from '@/shared/charts/chart-words'
import { PANEL_KINDS, type PanelKind } from '@/shared/charts/kinds/panel-kinds'
import { isAsked } from '@/shared/charts/log-chart'
import type { RunRuleSet } from '@/shared/charts/run-rule-sets'

interface PanelPlotProps {
  log: string
  /** What is read, as its column is called, and its unit. */
  label: string
  unit: Unit
  panel: ChartPanel
  choice: ChartChoice
  rules: RunRuleSet
  /** The window of readings; a mean or a sum is no reading, and is drawn without it. */
  specification?: { atLeast?: number; atMost?: number }
  runs?: readonly RunMark[]
}

/** One plot of a log's control chart, with the numbers of its limits. */
export function PanelPlot({ log, label, unit, panel, choice, rules, runs, ...props }: PanelPlotProps) {
  const what = plotted(panel.kind, label, choice)
  const { instants, signals } = panel
  const drawn = signalsToDraw(panel, rules)
  const { limits, ofSpread, ofReadings } = PANEL_KINDS[panel.kind]
  const specification = ofReadings ? props.specification : undefined
  const notRun = panel.rulesNotRun.length
  return (
    <ControlPlot
      title={`${log}: ${what}`}
      description={`${instants.length} points of ${what.toLowerCase()} over time; ${signals.length} signals.`}
      up={{ label: what, unit }}
      across={{ kind: 'time', title: `Date and time, ${works().timeZone}`, places: instants }}
      lines={panel.lines}
      limits={panel}
      stretches={panel.phases}
      specification={specification}
      runs={runs}
      limitNames={LIMIT_NAMES[limits]}
      signals={drawn}
      {...(ofSpread && { size: 'low', floor: 0 })}
      note={[
        ...(drawn.length < signals.length
          ? [`${signals.length - drawn.length} signals that nobody is asked about are not drawn.`]
          : []),
        ...(notRun > 0
          ? [
              `${notRun} run ${notRun === 1 ? 'rule is' : 'rules are'} not run here. ${panel.rulesNotRun[0]!.because}`,
            ]
          : []),
      ].join(' ')}
      numbers={numbersOf(panel, unit, specification)}
    />
  )
}

const LIMIT_NAMES: Readonly<Record<PanelKind['limits'], ComponentProps<typeof ControlPlot>['limitNames']>> = {
  'control limits': undefined,
  'decision interval': { upper: 'upper decision', centre: 'level', lower: 'lower decision' },
}
const MAX_DRAWN = 60

/** All signals while they can be told apart; of too many, those that are asked about. */
const signalsToDraw = (panel: ChartPanel, rules: RunRuleSet): ChartPanel['signals'] =>
  panel.signals.length <= MAX_DRAWN
    ? panel.signals
    : panel.signals.filter((signal) => isAsked(signal, panel, rules))

function numbersOf(
  { instants, lines, centre, lower, upper, phases, signals }: ChartPanel,
  unit: Unit,
  { atLeast, atMost }: { atLeast?: number; atMost?: number } = {},
): Numbers {
  const said = (value: number | undefined): string =>
    value === undefined || !Number.isFinite(value) ? '–' : formatQuantity(value, unit, 5)
  const [min, max] = extentOf(lines)
  const from = (index: number) => <Moment key={index} at={new Date(instants[index]!)} />
  const row = (what: string, value: string, note: Numbers['rows'][number][number] = '') => [what, value, note]
  return {
    columns: [{ label: 'What' }, { label: 'Value' }, { label: 'When, or from what', set: 'text' }],
    rows: [
      row('Points', String(instants.length), instants.length > 0 && from(0)),
      ...(instants.length > 0
        ? [
            row('Last point', said(lines[0]?.[instants.length - 1]), from(instants.length - 1)),
            row('Lowest', said(min)),
            row('Highest', said(max)),
          ]
        : []),
      ...phases.flatMap((phase) => {
        const of = phases.length > 1 ? `, ${phase.name}` : ''
        const last = phase.to - 1
        return [
          row(`Upper control limit${of}`, said(upper[last]), limitsInWords(phase)),
          row(`Centre${of}`, said(centre[last])),
          row(`Lower control limit${of}`, said(lower[last])),
        ]
      }),
      ...(atMost === undefined ? [] : [row('Specified: at most', said(atMost))]),
      ...(atLeast === undefined ? [] : [row('Specified: at least', said(atLeast))]),
      ...[...new Set(signals.map(({ message }) => message))].map((message) =>
        row(`Signals: ${message}`, String(signals.filter((signal) => signal.message === message).length)),
      ),
    ],
  }
}
