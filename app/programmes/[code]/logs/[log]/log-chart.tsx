import { LogOverTime } from '@/app/drawing/log-over-time'
import { chartLead, windowDrawn } from '@/app/charts/chart-lead'
import { PanelPlot } from '@/app/charts/panel-plot'
import { parameterAddress } from '@/app/addresses'
import { Notice } from '@/app/ui/notice'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { processCharts } from '@/shared/plan/parameters/control-charts'
import type { Log } from '@/shared/records/log'
import { chartInWords, withinASentence } from '@/shared/charts/chart-words'
import { runsOfLog } from '@/shared/charts/runs-of-log'
import { logChart, specifiedCharting } from '@/shared/charts/log-chart'
import { chartingAsked, type ChartAsked } from './chart-asked'
import { ChartForm } from './chart-form'
import { RunsAgainstReadings } from './runs-against-readings'
import { isWithin, panelWithin } from './panel-within'
import { NothingRead } from './nothing-read'

interface LogChartProps {
  view: ProgrammeView
  log: Log
  asked: ChartAsked
}

/** A log's control chart as specified, or as the address asks, with the limits of the specification. */
export function LogChart({ view, log, asked }: LogChartProps) {
  const { facts } = view.state
  const specified = specifiedCharting(log, facts)
  const instead = chartingAsked(asked, specified)
  const shown = logChart(log, facts, instead)
  const { series, label, unit, panels, choice, rules } = shown
  if (series.values.length === 0) return <NothingRead log={log} title="No readings yet" />
  const specification = windowDrawn(shown)
  const ofRuns = runsOfLog(log, facts)
  const runs = ofRuns?.runs.filter(({ at }) => isWithin(at, asked))
  return (
    <Section
      id="chart"
      heading="Chart"
      lead={
        <>
          {chartLead(shown)}{' '}
          <a href={parameterAddress(view.code, processCharts.key)}>Which chart is specified</a>
        </>
      }
    >
      {instead && (
        <Notice kind="info" title="Not the chart as specified">
          What must be answered follows from the specified chart:{' '}
          {withinASentence(chartInWords(specified.choice))}.
        </Notice>
      )}
      {panels.map((panel, position) => (
        <PanelPlot
          key={panel.kind}
          log={log.code}
          label={label}
          unit={unit}
          panel={panelWithin(panel, asked)}
          choice={choice}
          rules={rules}
          specification={specification}
          runs={position === 0 ? runs : undefined}
        />
      ))}
      {panels.length === 0 && (
        <LogOverTime
          title={`${log.code} over time`}
          characteristic={label}
          unit={unit}
          readings={series.values.map((value, index) => ({ at: series.instants[index]!, value }))}
          specification={specification}
          runs={runs}
        />
      )}
      {ofRuns && <RunsAgainstReadings log={log.code} of={ofRuns} />}
      <ChartForm
        code={view.code}
        log={log.code}
        shown={shown}
        asked={asked}
        specified={specified}
        other={instead !== undefined}
      />
    </Section>
  )
}
