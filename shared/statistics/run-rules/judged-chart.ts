import type { Chart } from '@/shared/statistics/charts/chart'
import { detectSignals } from './detect'
import { suits } from './rule'
import type { RunRule } from './rule'
import type { Signal } from './signal'

/** A chart with its signals, the rules that were run, and those that were not and why. */
export type JudgedChart = Chart & {
  signals: readonly Signal[]
  rulesRun: readonly string[]
  rulesNotRun: readonly { ruleId: string; because: string }[]
}

const BECAUSE = {
  'near-normal': '',
  skewed: 'The plotted statistic is skewed, so its zones fill unevenly even while nothing is wrong.',
  correlated: 'Neighbouring points share readings, so they form runs even while nothing is wrong.',
} as const

/** Runs those of the rules that mean something for this kind of chart. */
export function judgeChart(chart: Chart, rules: readonly RunRule[]): JudgedChart {
  const run = rules.filter((rule) => suits(rule, chart.behaviour))
  return {
    ...chart,
    signals: detectSignals(chart, run),
    rulesRun: run.map((rule) => rule.id),
    rulesNotRun: rules
      .filter((rule) => !run.includes(rule))
      .map((rule) => ({ ruleId: rule.id, because: BECAUSE[chart.behaviour] })),
  }
}
