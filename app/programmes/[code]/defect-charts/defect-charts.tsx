import { defectChartsAddress, inspectionsAddress } from '@/app/addresses'
import { ControlPlot } from '@/app/drawing/control-plot'
import type { Numbers } from '@/app/drawing/numbers-table'
import { Button } from '@/app/ui/button'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { ChoiceField, TextField } from '@/app/ui/field'
import { Notice } from '@/app/ui/notice'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { InspectionPlaces } from '../inspections/places'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { formatNumber } from '@/shared/quantity/format'
import type { DefectSample } from '@/shared/records/defect-samples'
import { limitsInWords } from '@/shared/rules/control/chart-words'
import { DEFECT_CHARTS, defectChart, isThin, type DefectChartKey } from '@/shared/rules/control/defect-chart'
import { specifiedRules } from '@/shared/rules/control/log-chart'
import { RUN_RULE_SETS } from '@/shared/rules/control/run-rule-sets'
import type { JudgedChart } from '@/shared/statistics/run-rules/judged-chart'

/** What the address asks for; a link carries it. */
export interface DefectChartAsked {
  chart?: string
  from?: string
  to?: string
}

const isChart = (key: string | undefined): key is DefectChartKey => key !== undefined && key in DEFECT_CHARTS

/** One chart of counts over all inspections, with what it signals and the choice of another. */
export function DefectCharts({ view, asked }: { view: ProgrammeView; asked: DefectChartAsked }) {
  const { facts } = view.state
  const key = isChart(asked.chart) ? asked.chart : 'u'
  const { plotted, unit, label, source } = DEFECT_CHARTS[key]
  const set = RUN_RULE_SETS[specifiedRules(facts)]
  const days = { ...(asked.from && { from: asked.from }), ...(asked.to && { to: asked.to }) }
  const found = defectChart(facts.records.inspections, key, set.drawn, days)
  const rules = new Map<string, string>(set.drawn.map(({ id, says }) => [id, says]))
  return (
    <>
      <InspectionPlaces code={view.code} at={defectChartsAddress(view.code)} />
      <form method="get" aria-label="Which chart">
        <div className="form-row">
          <ChoiceField
            name="chart"
            label="Chart"
            choices={Object.entries(DEFECT_CHARTS).map(([value, { label: text }]) => ({ value, text }))}
            defaultValue={key}
          />
          <TextField
            name="from"
            type="date"
            label="Limits from samples of"
            defaultValue={asked.from}
            optional
          />
          <TextField name="to" type="date" label="to" defaultValue={asked.to} optional />
          <Button type="submit">Draw it so</Button>
        </div>
      </form>
      {'says' in found ? (
        <Empty title="No chart yet">
          {found.says} <a href={inspectionsAddress(view.code)}>Inspections</a>
        </Empty>
      ) : (
        <Section
          heading={`Chart ${label}`}
          lead={`Limits ${asked.from || asked.to ? `estimated from the ${pointsUsed(found.chart)} samples of the days named, and held over all` : limitsInWords(found.chart.phases[0]!)}; they follow each sample’s size. Signals by the ${set.name}. ${source.cite}.`}
        >
          <ControlPlot
            title={plotted}
            description={`${found.samples.length} samples in order; ${found.chart.signals.length} signals.`}
            up={{ label: plotted, unit }}
            across={{
              kind: 'order',
              title: 'Samples in the order they were looked at',
              places: found.samples.map((_, index) => index + 1),
            }}
            lines={[found.chart.values]}
            limits={found.chart}
            signals={found.chart.signals.map(({ soundedAt, ruleId }) => ({
              point: soundedAt,
              line: 0,
              says: rules.get(ruleId) ?? ruleId,
            }))}
            floor={0}
            {...(found.chart.rulesSetAside.length > 0 && {
              note: `${found.chart.rulesSetAside.length} run rules are not run here. ${found.chart.rulesSetAside[0]!.because}`,
            })}
            numbers={numbersOf(found.samples, found.chart)}
          />
          {isThin(found) && (
            <Notice kind="info" title="Samples are small for this chart">
              Fewer than one defect is expected in a sample, so that a single one lies beyond the limits.
              Chart the assemblies of a day together, or look at the rate with its bounds in the assessment.
            </Notice>
          )}
          <SignalTable samples={found.samples} chart={found.chart} rules={rules} />
          <p className="field-hint">
            A low count is news too: something got better, or somebody looked less well. Whether the rate is
            low enough, the assessment says.
          </p>
        </Section>
      )}
    </>
  )
}

const pointsUsed = ({ phases }: JudgedChart): number => {
  const limits = phases[0]?.limits
  return limits?.kind === 'estimated' ? limits.pointsUsed : 0
}

function SignalTable({
  samples,
  chart,
  rules,
}: {
  samples: readonly DefectSample[]
  chart: JudgedChart
  rules: ReadonlyMap<string, string>
}) {
  if (chart.signals.length === 0) return <p>The chart shows no signal.</p>
  return (
    <RuledTable
      caption="Signals of the chart"
      rows={chart.signals}
      rowKey={({ ruleId, soundedAt }) => `${ruleId} ${soundedAt}`}
      columns={[
        { label: 'Sample', names: true, cell: ({ soundedAt }) => samples[soundedAt]!.name },
        { label: 'On', cell: ({ soundedAt }) => <Day at={samples[soundedAt]!.on} /> },
        { label: 'Signal', cell: ({ ruleId }) => rules.get(ruleId) ?? ruleId },
        {
          label: 'Plotted',
          set: 'number',
          cell: ({ soundedAt }) => formatNumber(chart.values[soundedAt]!, 3),
        },
        { label: 'Defects', set: 'number', cell: ({ soundedAt }) => samples[soundedAt]!.defects },
        { label: 'Joints seen', set: 'number', cell: ({ soundedAt }) => samples[soundedAt]!.jointsSeen },
      ]}
    />
  )
}

const MOST_ROWS = 200

function numbersOf(samples: readonly DefectSample[], chart: JudgedChart): Numbers {
  const first = Math.max(0, samples.length - MOST_ROWS)
  return {
    columns: [
      { label: 'Sample' },
      { label: 'Assemblies' },
      { label: 'Joints seen' },
      { label: 'Defects' },
      { label: 'Plotted' },
      { label: 'Lower limit' },
      { label: 'Upper limit' },
    ],
    rows: samples.slice(first).map(({ name, assemblies, jointsSeen, defects }, index) => {
      const at = first + index
      return [
        name,
        String(assemblies),
        String(jointsSeen),
        String(defects),
        ...[chart.values, chart.lower, chart.upper].map((column) => formatNumber(column[at]!, 3)),
      ]
    }),
  }
}
