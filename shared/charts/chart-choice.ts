import {
  type CHART_OPTIONS,
  type GROUPING_OPTIONS,
  type ChartPhaseRow,
  type ProcessChartRow,
} from '@/shared/plan/parameters/control-charts'
import type { Log } from '@/shared/records/log'

export type ChosenChart = (typeof CHART_OPTIONS)[number]['value']
export type Grouping = (typeof GROUPING_OPTIONS)[number]['value']

/** How a log is charted: which chart, of which subgroups, with limits from where, and where it starts afresh. */
export interface ChartChoice {
  readonly chart: ChosenChart
  /** Readings a subgroup; only the charts of subgroups look at it. */
  readonly subgroup: number
  readonly grouping: Grouping
  /** Days, both included, whose readings set the limits that are held afterwards. */
  readonly baseline?: { readonly from: string; readonly to: string }
  /** Resets, the earliest first. */
  readonly phases: readonly { readonly startsOn: string; readonly name: string }[]
}

const USUAL_SUBGROUP = 5

/** What the specification says of a log's chart; the individuals chart with estimated limits where it says nothing. */
export function specifiedChart(
  { code, characteristic }: Log,
  charts: readonly ProcessChartRow[] | undefined,
  phases: readonly ChartPhaseRow[] | undefined,
): ChartChoice {
  const row = charts?.find((one) => one.characteristic === characteristic)
  const { baselineFrom: from, baselineTo: to } = row ?? {}
  return {
    chart: row?.chart ?? 'individuals',
    subgroup: row?.subgroup ?? USUAL_SUBGROUP,
    grouping: row?.grouping ?? 'in-a-row',
    ...(from !== undefined && to !== undefined && from <= to && { baseline: { from, to } }),
    phases: newPhases({ code }, phases),
  }
}

/** The resets of a log, the earliest first. */
const newPhases = (
  { code }: Pick<Log, 'code'>,
  phases: readonly ChartPhaseRow[] = [],
): ChartChoice['phases'] =>
  phases
    .filter(({ log }) => log.trim().toLowerCase() === code.toLowerCase())
    .map(({ startsOn, name }) => ({ startsOn, name }))
    .sort((one, other) => (one.startsOn < other.startsOn ? -1 : 1))
