import { defectChartsAddress, findingAddress, inspectionsAddress, parameterAddress } from '@/app/addresses'
import { Empty } from '@/app/ui/empty'
import { Notice } from '@/app/ui/notice'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { defectCharts } from '@/shared/plan/parameters/defect-charts'
import { defectChart, isThin, type DefectChartChoice } from '@/shared/charts/defect-chart'
import { DEFECT_CHARTS, defectChartLabel } from '@/shared/charts/defect-chart-kinds'
import { defectSignals } from '@/shared/charts/defect-signals'
import { defectSignalsAnswered } from '@/shared/rules/assessment/defect-signals-answered'
import { defectChartsOf } from '@/shared/charts/open-defect-signals'
import { limitsInWords } from '@/shared/charts/chart-words'
import { specifiedRules } from '@/shared/charts/log-chart'
import { RUN_RULE_SETS } from '@/shared/charts/run-rule-sets'
import type { ChartPhase } from '@/shared/statistics/charts/chart'
import { InspectionPlaces } from '../inspections/places'
import { choiceAsked, type DefectChartAsked } from './chart-asked'
import { DefectChartForm } from './chart-form'
import { DefectPlot } from './defect-plot'
import { DefectSignals } from './signals'
import { sameValue } from '@/shared/plan/same-value'

/** One chart of counts over all inspections, with what it signals, what was answered, and the choice of another. */
export function DefectCharts({ view, asked }: { view: ProgrammeView; asked: DefectChartAsked }) {
  const { facts } = view.state
  const { inspections } = facts.records
  const specified = defectChartsOf(facts)
  const choice = choiceAsked(asked, specified, inspections)
  const ruleSet = specifiedRules(facts)
  const found = defectChart(inspections, choice, RUN_RULE_SETS[ruleSet].drawn)
  const signals = defectSignals(found, choice, ruleSet)
  return (
    <>
      <InspectionPlaces code={view.code} at={defectChartsAddress(view.code)} />
      <AnsweredFor code={view.code} charts={specified} />
      <DefectChartForm shown={choice} asked={asked} />
      {'message' in found ? (
        <Empty title="No chart yet">
          {found.message} <a href={inspectionsAddress(view.code)}>Inspections</a>
        </Empty>
      ) : (
        <>
          <Section
            heading={`Chart ${defectChartLabel(choice.chart)}`}
            lead={`Limits ${DEFECT_CHARTS[choice.chart].formula}, ${stretchesInWords(found.chart.phases)}. Signals by the ${RUN_RULE_SETS[ruleSet].name}. ${DEFECT_CHARTS[choice.chart].source.cite}.`}
          >
            <DefectPlot chart={choice.chart} found={found} signals={signals} />
            {isThin(found) && (
              <Notice kind="info" title="Samples are small for this chart">
                Fewer than one defect is expected in a sample, so that a single one may lie beyond the limits.
                Chart the assemblies of a day together, or look at the rate with its bounds in the assessment.
              </Notice>
            )}
          </Section>
          <DefectSignals
            view={view}
            chart={choice.chart}
            signals={signals}
            specified={specified.some((one) => sameValue(one, choice))}
          />
        </>
      )}
    </>
  )
}

/** Which charts must be answered before the gate, and where that is said. */
function AnsweredFor({ code, charts }: { code: string; charts: readonly DefectChartChoice[] }) {
  return (
    <p>
      Answered for before the gate:{' '}
      {charts.map(({ chart }, index) => (
        <span key={chart}>
          {index > 0 && '; '}
          <a href={`${defectChartsAddress(code)}?chart=${chart}`}>{defectChartLabel(chart)}</a>
        </span>
      ))}
      . <a href={parameterAddress(code, defectCharts.key)}>Where that is specified</a>,{' '}
      <a href={findingAddress(code, defectSignalsAnswered.id)}>what is found</a>
    </p>
  )
}

/** "held, from 8 samples of …" for the one stretch, or for each by its name. */
const stretchesInWords = (phases: readonly ChartPhase[]): string =>
  phases.length === 1
    ? limitsInWords(phases[0]!)
    : phases.map((phase) => `${phase.name}: ${limitsInWords(phase)}`).join('; ')
