import { CHART_OPTIONS, GROUPING_OPTIONS } from '@/shared/plan/parameters/control-charts'
import { LOG_CHARTS } from '@/shared/charts/kinds/log-charts'
import type { Charting } from '@/shared/charts/log-chart'
import { RUN_RULE_SETS, type RunRuleSet } from '@/shared/charts/run-rule-sets'

/** What an address may say of a chart; a link carries it. */
export interface ChartAsked {
  chart?: string
  size?: string
  grouping?: string
  rules?: string
  limits?: string
  from?: string
  to?: string
}

/** The chart as an address asks for it, over what the specification says; undefined when it asks for nothing else. */
export function chartingAsked(asked: ChartAsked, specified: Charting): Charting | undefined {
  const chart = CHART_OPTIONS.find(({ value }) => value === asked.chart)?.value
  const grouping = GROUPING_OPTIONS.find(({ value }) => value === asked.grouping)?.value
  const rules =
    asked.rules && Object.hasOwn(RUN_RULE_SETS, asked.rules) ? (asked.rules as RunRuleSet) : undefined
  const size = Number(asked.size)
  const { baseline, ...choice } = specified.choice
  const instead: Charting = {
    rules: rules ?? specified.rules,
    choice: {
      ...choice,
      ...(baseline && asked.limits !== 'estimated' && { baseline }),
      ...(chart && { chart }),
      ...(grouping && { grouping }),
      ...(Number.isInteger(size) && size >= 2 && size <= 25 && { subgroup: size }),
    },
  }
  return sameCharting(instead, specified) ? undefined : instead
}

function sameCharting(one: Charting, other: Charting): boolean {
  const told = ({ choice: { chart, subgroup, grouping, baseline }, rules }: Charting) =>
    JSON.stringify([chart, LOG_CHARTS[chart].ofSubgroups && [subgroup, grouping], baseline, rules])
  return told(one) === told(other)
}
