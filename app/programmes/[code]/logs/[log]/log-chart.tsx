import { LogOverTime } from '@/app/drawing/log-over-time'
import { parameterAddress } from '@/app/addresses'
import { Empty } from '@/app/ui/empty'
import { Notice } from '@/app/ui/notice'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { processCharts } from '@/shared/plan/parameters/control-charts'
import type { Log } from '@/shared/records/log'
import { FEWEST_TO_CHART } from '@/shared/charts/chart-stretches'
import { PANEL_KINDS } from '@/shared/charts/kinds/panel-kinds'
import { chartInWords, limitsInWords, withinASentence } from '@/shared/charts/chart-words'
import { runsOfLog } from '@/shared/charts/runs-of-log'
import { logChart, specifiedCharting } from '@/shared/charts/log-chart'
import { windowInWords } from '@/shared/logs/logged-window'
import { RUN_RULE_SETS } from '@/shared/charts/run-rule-sets'
import { chartingAsked, type ChartAsked } from './chart-asked'
import { ChartForm } from './chart-form'
import { PanelPlot } from './panel-plot'
import { RunsAgainstReadings } from './runs-against-readings'
import { isWithin, panelWithin } from './panel-within'

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
  const { series, label, unit, panels, choice, rules, window, leftOut } = shown
  if (series.values.length === 0)
    return <Empty title="No readings yet">Type one in, or import a CSV file, below.</Empty>
  const specification = {
    ...(window?.min && { atLeast: window.min.value }),
    ...(window?.max && { atMost: window.max.value }),
  }
  const ofRuns = runsOfLog(log, facts)
  const runs = ofRuns?.runs.filter(({ at }) => isWithin(at, asked))
  return (
    <Section
      id="chart"
      heading="Chart"
      lead={
        <>
          {panels[0]
            ? `${chartInWords(choice)}. Limits ${panels[0].phases.map((phase) => (panels[0]!.phases.length > 1 ? `${phase.name}: ${limitsInWords(phase)}` : limitsInWords(phase))).join('; ')}. ${PANEL_KINDS[panels[0].kind].byRunRules ? `Signals by the ${RUN_RULE_SETS[rules].name}.` : ''}`
            : series.values.length < FEWEST_TO_CHART
              ? `Control limits are drawn from ${FEWEST_TO_CHART} readings on.`
              : series.values.every((value) => value === series.values[0])
                ? 'All readings are alike: no control limits can be drawn.'
                : `No whole subgroup of ${choice.subgroup} readings: the readings are shown as they are.`}{' '}
          {leftOut > 0 && panels[0] && `${leftOut} readings make up no whole subgroup and are left out. `}
          {window && `Specified: ${windowInWords(window)} `}
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
          // A mean or a sum is no reading: the window of readings is not its limit.
          specification={PANEL_KINDS[panel.kind].ofReadings ? specification : undefined}
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
