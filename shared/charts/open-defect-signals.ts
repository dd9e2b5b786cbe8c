import { defectChartPhases, defectCharts, type DefectChartKey } from '@/shared/plan/parameters/defect-charts'
import { answerToDefects } from './defect-signal-answers'
import { specifiedRules } from './log-chart'
import { RUN_RULE_SETS } from './run-rule-sets'
import type { Facts } from '@/shared/rules/facts'
import { inputsOf } from '@/shared/rules/inputs-of'
import { optional } from '@/shared/rules/rule'
import { defectChart, specifiedDefectCharts } from './defect-chart'
import { defectSignals } from './defect-signals'
import { recordsOfKind } from '@/shared/records/records-of-kind'

const chartReads = { charts: optional(defectCharts), phases: optional(defectChartPhases) }

/** The charts of defects whose signals the specification wants answered. */
export function defectChartsOf(facts: Facts): ReturnType<typeof specifiedDefectCharts> {
  const { charts, phases } = inputsOf(chartReads, facts) ?? {}
  return specifiedDefectCharts(charts, phases)
}

/** A chart of defects with signals that nobody has answered yet. */
export interface OpenDefectSignals {
  readonly chart: DefectChartKey
  readonly open: number
}

/** The specified charts with unanswered signals. */
export function openDefectSignals(facts: Facts): OpenDefectSignals[] {
  const answers = recordsOfKind(facts.records, 'defect-signal-answer')
  const rules = specifiedRules(facts)
  return defectChartsOf(facts).flatMap((choice) => {
    const found = defectChart(facts.records.inspections, choice, RUN_RULE_SETS[rules].asked)
    const open = defectSignals(found, choice, rules).filter(
      (signal) => !answerToDefects(answers, signal),
    ).length
    return open > 0 ? [{ chart: choice.chart, open }] : []
  })
}
