import { addDays } from '@/shared/quantity/calendar'
import { dayBegins, dayOf } from '@/shared/logs/log-day'
import type { Series } from '@/shared/logs/log-series'
import type { PhaseStart } from '@/shared/statistics/charts/phases'
import type { ChartChoice } from './chart-choice'

/** Fewer readings give no limits worth drawing. */
export const FEWEST_TO_CHART = 8

/** Where each reset falls among the points; a start before the first or after the last point is none. */
export function phaseStarts(
  { instants, log = {} }: Pick<Series, 'instants' | 'log'>,
  phases: ChartChoice['phases'],
): readonly [PhaseStart, ...PhaseStart[]] {
  const first: PhaseStart = { name: 'from the start', from: 0 }
  const starts: [PhaseStart, ...PhaseStart[]] = [first]
  for (const { startsOn, name } of phases) {
    const instant = dayBegins(log, startsOn)
    const from = firstFrom(instants, instant)
    if (from >= instants.length) continue
    const before = starts[starts.length - 1]!
    if (before.from === from) starts[starts.length - 1] = { name, from }
    else starts.push({ name, from })
  }
  return starts
}

/** First and after-last point of those days among ascending instants. */
export const pointsOn = (
  { instants, log = {} }: Pick<Series, 'instants' | 'log'>,
  { from, to }: { readonly from: string; readonly to: string },
): { from: number; to: number } => ({
  from: firstFrom(instants, dayBegins(log, from)),
  to: firstFrom(instants, dayBegins(log, addDays(to, 1))),
})

/** Place of the first instant not before another, by halving. */
function firstFrom(instants: readonly number[], instant: number): number {
  let [low, high] = [0, instants.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if (instants[middle]! < instant) low = middle + 1
    else high = middle
  }
  return low
}

/** Readings put together, with the instant of the last reading of each group. */
export interface Groups {
  readonly instants: readonly number[]
  readonly groups: readonly (readonly number[])[]
  /** Readings that made up no whole group. */
  readonly leftOut: number
}

/** Whole subgroups of a series; none reaches across a reset. */
export function groupsOf({ instants, values, log = {} }: Series, choice: ChartChoice): Groups {
  const { subgroup, grouping } = choice
  const starts = new Set(phaseStarts({ instants, log }, choice.phases).map(({ from }) => from))
  const found: { at: number; readings: readonly number[] }[] = []
  let open: number[] = []
  let dayEnds = -Infinity
  values.forEach((value, index) => {
    const at = instants[index]!
    const isNewDay = at >= dayEnds
    if (isNewDay) dayEnds = dayBegins(log, addDays(dayOf(log, at), 1))
    if (starts.has(index) || (grouping === 'each-day' && isNewDay)) open = []
    if (open.length === subgroup) return
    open.push(value)
    if (open.length < subgroup) return
    found.push({ at: instants[index]!, readings: open })
    if (grouping === 'in-a-row') open = []
  })
  return {
    instants: found.map(({ at }) => at),
    groups: found.map(({ readings }) => readings),
    leftOut: values.length - found.length * subgroup,
  }
}
