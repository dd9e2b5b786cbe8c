import {
  type CHART_OPTIONS,
  type GROUPING_OPTIONS,
  type ChartPhaseRow,
  type ProcessChartRow,
} from '@/shared/plan/parameters/control-charts'
import type { Log } from '@/shared/records/log'
import type { RecordOf } from '@/shared/records/record-kinds'

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

/** A reset that the specification states, or that the machine's log has for every programme. */
type Reset = ChartPhaseRow | RecordOf<'chart-reset'>

/**
 * What the specification says of a log's chart; the individuals chart with estimated limits where it says nothing. It
 * starts afresh where the specification says so, and where it is recorded at the machine.
 */
export function specifiedChart(
  { code, characteristic }: Log,
  charts: readonly ProcessChartRow[] | undefined,
  phases: readonly ChartPhaseRow[] | undefined,
  resets: readonly RecordOf<'chart-reset'>[],
): ChartChoice {
  const row = charts?.find((one) => one.characteristic === characteristic)
  const { baselineFrom: from, baselineTo: to } = row ?? {}
  return {
    chart: row?.chart ?? 'individuals',
    subgroup: row?.subgroup ?? USUAL_SUBGROUP,
    grouping: row?.grouping ?? 'in-a-row',
    ...(from !== undefined && to !== undefined && from <= to && { baseline: { from, to } }),
    phases: newPhases({ code }, [...(phases ?? []), ...resets]),
  }
}

/** The resets of a log, the earliest first; of two on one day the one given first. */
function newPhases({ code }: Pick<Log, 'code'>, resets: readonly Reset[]): ChartChoice['phases'] {
  const own = resets.filter(({ log }) => log.trim().toLowerCase() === code.toLowerCase())
  const firstOfDay = new Map<string, string>()
  for (const { startsOn, name } of own) if (!firstOfDay.has(startsOn)) firstOfDay.set(startsOn, name)
  return [...firstOfDay]
    .map(([startsOn, name]) => ({ startsOn, name }))
    .sort((one, other) => (one.startsOn < other.startsOn ? -1 : 1))
}
