import type { ChartPanel } from '@/shared/charts/chart-panel'
import { instantOf, MS_PER_DAY } from '@/shared/quantity/calendar'
import { isDate } from '@/shared/quantity/is-date'

interface Days {
  readonly from?: string
  readonly to?: string
}

/** The first instant of the days, and the first after them. */
const boundsOf = ({ from, to }: Days): { first: number; last: number } => ({
  first: from && isDate(from) ? instantOf(from) : -Infinity,
  last: to && isDate(to) ? instantOf(to) + MS_PER_DAY : Infinity,
})

export function isWithin(instant: number, days: Days): boolean {
  const { first, last } = boundsOf(days)
  return instant >= first && instant < last
}

/** The part of a panel that lies in these days, both included; its limits stay what they are. */
export function panelWithin(panel: ChartPanel, days: Days): ChartPanel {
  const { first, last } = boundsOf(days)
  const { instants } = panel
  let [from, to] = [0, instants.length]
  while (from < to && instants[from]! < first) from++
  while (to > from && instants[to - 1]! >= last) to--
  if (from === 0 && to === instants.length) return panel
  const cut = (column: Float64Array): Float64Array => column.subarray(from, to)
  return {
    ...panel,
    instants: instants.slice(from, to),
    lines: panel.lines.map(cut),
    centre: cut(panel.centre),
    lower: cut(panel.lower),
    upper: cut(panel.upper),
    phases: panel.phases.flatMap((phase) =>
      phase.to <= from || phase.from >= to
        ? []
        : [{ ...phase, from: Math.max(phase.from, from) - from, to: Math.min(phase.to, to) - from }],
    ),
    signals: panel.signals.flatMap((signal) =>
      signal.point < from || signal.point >= to ? [] : [{ ...signal, point: signal.point - from }],
    ),
  }
}
