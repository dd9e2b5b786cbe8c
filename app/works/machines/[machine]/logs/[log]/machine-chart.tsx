import { machineLogAddress } from '@/app/addresses'
import { chartLead, windowDrawn } from '@/app/charts/chart-lead'
import { PanelPlot } from '@/app/charts/panel-plot'
import { EveryNumberOverTime } from '@/app/drawing/every-number-over-time'
import { Empty } from '@/app/ui/empty'
import { Section } from '@/app/ui/section'
import type { MachineLogView } from '@/lib/queries/works/machine-log'
import type { Characteristic } from '@/shared/records/characteristic'
import type { RecordOf } from '@/shared/records/record-kinds'
import { Narrowest } from '../../../../log-table'
import { chartsAtMachine, type ChartAtMachine } from './charts-at-machine'

interface MachineChartProps {
  view: MachineLogView
  characteristic: Characteristic
  resets: readonly RecordOf<'chart-reset'>[]
  /** The programme whose chart is asked for. */
  as: string | undefined
}

/** The control chart of all that the machine's log holds, as a programme that reads it specifies; else the numbers as read. */
export function MachineChart({ view, characteristic, resets, as }: MachineChartProps) {
  const { log, state, machine } = view
  if (log.readings.count === 0)
    return <Empty title="No readings yet">Type one in, or import a CSV file, below.</Empty>
  const charts = chartsAtMachine(view, resets)
  const shown = charts.find(({ programmes }) => as !== undefined && programmes.includes(as)) ?? charts[0]!
  const { panels, label, unit, choice, rules } = shown.chart
  const isCharted = panels.length > 0
  return (
    <Section
      id="chart"
      heading={isCharted ? 'Chart' : 'Over time'}
      lead={
        <>
          {isCharted && `${chartLead(shown.chart)} `}
          Window common to the programmes of the line: <Narrowest log={state} />.
          {isCharted &&
            ' All readings of the machine are drawn; which signals a programme has follows from the days on which it ran here.'}
        </>
      }
    >
      {isCharted && charts.length > 1 && (
        <ChartedAs charts={charts} shown={shown} at={machineLogAddress(machine.code, state.name)} />
      )}
      {panels.map((panel) => (
        <PanelPlot
          key={panel.kind}
          log={state.name}
          label={label}
          unit={unit}
          panel={panel}
          choice={choice}
          rules={rules}
          specification={windowDrawn(shown.chart)}
        />
      ))}
      {!isCharted && <EveryNumberOverTime log={log} characteristic={characteristic} />}
    </Section>
  )
}

interface ChartedAsProps {
  charts: readonly ChartAtMachine[]
  shown: ChartAtMachine
  /** Address of the log. */
  at: string
}

/** Where programmes want it charted differently: each way, by the programmes that want it so. */
const ChartedAs = ({ charts, shown, at }: ChartedAsProps) => (
  <nav aria-label="Charted as specified by" className="print-hidden">
    <p>
      Charted as specified by{' '}
      {charts.map((chart, position) => (
        <span key={chart.programmes.join(' ')}>
          {position > 0 && ' · '}
          {chart === shown ? (
            <strong aria-current="true">{chart.programmes.join(', ')}</strong>
          ) : (
            <a href={`${at}?as=${encodeURIComponent(chart.programmes[0]!)}#chart`}>
              {chart.programmes.join(', ')}
            </a>
          )}
        </span>
      ))}
    </p>
  </nav>
)
