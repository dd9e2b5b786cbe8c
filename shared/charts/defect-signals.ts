import type { DefectSample } from './defect-samples'
import type { DefectSignalName } from './defect-signal-answers'
import { RUN_RULE_SETS, type RunRuleSet } from './run-rule-sets'
import type { DefectChart, DefectChartChoice } from './defect-chart'

/** A signal of a chart of defects, told by the sample that completed the pattern. */
export interface DefectSignal extends DefectSignalName {
  readonly message: string
  /** Place among the chart's points, counted from 0. */
  readonly point: number
  readonly of: DefectSample
  /** Of the plotted point. */
  readonly value: number
  /** Whether an answer is asked for where the chart is one that is answered for. */
  readonly asked: boolean
}

/** Every signal that a chart gives, in the order in which they would have sounded; none where there is no chart. */
export function defectSignals(
  found: DefectChart,
  { chart: name }: Pick<DefectChartChoice, 'chart'>,
  rules: RunRuleSet,
): DefectSignal[] {
  if ('message' in found) return []
  const { drawn, asked } = RUN_RULE_SETS[rules]
  const words = new Map<string, string>(drawn.map(({ id, message }) => [id, message]))
  const answered = new Set<string>(asked.map(({ id }) => id))
  return found.chart.signals.map(({ ruleId, soundedAt }) => {
    const of = found.samples[soundedAt]!
    return {
      chart: name,
      chartRule: ruleId,
      sample: of.name,
      inspectedOn: of.on,
      message: words.get(ruleId) ?? ruleId,
      point: soundedAt,
      of,
      value: found.chart.values[soundedAt]!,
      asked: answered.has(ruleId),
    }
  })
}
