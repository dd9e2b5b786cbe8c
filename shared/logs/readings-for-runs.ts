import type { Speaks } from '@/shared/records/characteristic'
import type { Readings } from '@/shared/records/readings'
import { dayOf, type Clock } from './log-day'
import type { RunDay } from './run-days'

/**
 * What a shared machine's readings, in time order, say about the boards of one programme: which of them count
 * for the days on which it ran there. Where it never ran, only what speaks always does. Before a run that began ahead of
 * the day's first reading, the newest of an earlier day speaks as well.
 */
export function readingsForRuns(
  readings: Readings,
  runDays: readonly RunDay[],
  speaks: Speaks,
  clock: Clock,
): Readings {
  if (speaks === 'always' || readings.count === 0) return readings
  const at = (readings.columns['at'] ?? []) as readonly number[]
  if (speaks === 'as a course') return chosen(readings, courseRows(at, runDays.at(-1)?.day, clock))
  return chosen(readings, countedRows(at, daysRead(at, clock), runDays, speaks === 'until the next'))
}

/** All up to the first after a day; none where there is no day. */
function courseRows(at: readonly number[], last: string | undefined, clock: Clock): ReadonlySet<number> {
  if (last === undefined) return new Set()
  const after = at.findIndex((instant) => dayOf(clock, instant) > last)
  return new Set(at.slice(0, after < 0 ? at.length : after + 1).keys())
}

/** The rows of one day: from the first to before `end`. */
interface DayRead {
  readonly day: string
  readonly first: number
  readonly end: number
}

function daysRead(at: readonly number[], clock: Clock): DayRead[] {
  const days: { day: string; first: number; end: number }[] = []
  at.forEach((instant, index) => {
    const day = dayOf(clock, instant)
    const open = days.at(-1)
    if (open?.day === day) open.end = index + 1
    else days.push({ day, first: index, end: index + 1 })
  })
  return days
}

function countedRows(
  at: readonly number[],
  days: readonly DayRead[],
  runDays: readonly RunDay[],
  neighboursToo: boolean,
): ReadonlySet<number> {
  const rows = new Set<number>()
  for (const { day: runDay, begunAt } of runDays) {
    const next = days.findIndex(({ day }) => day >= runDay)
    const place = next < 0 ? days.length : next
    const own = days[place]?.day === runDay ? days[place] : undefined
    for (let row = own?.first ?? 0; row < (own?.end ?? 0); row++) rows.add(row)
    const before = days[place - 1]
    const tooLate = own !== undefined && begunAt !== undefined && at[own.first]! > begunAt
    if (before && (!own || tooLate || neighboursToo)) rows.add(before.end - 1)
    const after = days[own ? place + 1 : place]
    if (after && neighboursToo) rows.add(after.first)
  }
  return rows
}

function chosen(readings: Readings, rows: ReadonlySet<number>): Readings {
  if (rows.size === readings.count) return readings
  const order = [...rows].sort((a, b) => a - b)
  return {
    count: order.length,
    columns: Object.fromEntries(
      Object.entries(readings.columns).map(([name, cells]) => [
        name,
        order.map((index) => cells[index] ?? null),
      ]),
    ),
  }
}
