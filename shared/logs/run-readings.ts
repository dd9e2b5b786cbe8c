import { addDays, MS_PER_HOUR } from '@/shared/quantity/calendar'
import type { Log } from '@/shared/records/log'
import type { SolderingRun } from '@/shared/records/soldering-work'
import { dayBegins, instantAtHour } from './log-day'
import type { LogSeries } from './log-series'

/** A reading by its log and its place in the series. */
export interface ReadingOfRun {
  readonly series: LogSeries
  readonly at: number
}

/** What logs say of one run: the readings that speak for it, or why there are none. */
export type RunReadings =
  | { readonly readings: readonly ReadingOfRun[] }
  | { readonly missing: 'line not named' | 'no log of its line' | 'no reading in time' }

/**
 * The readings that speak for a run, of the logs of its line (or bench). A run
 * that states its hour is held against the newest reading before it, no older
 * than the interval. A run known by its day only is held against every reading
 * of that day, or else the newest before it; age then counts to the day's end.
 * Days and hours by the works' clock; the interval in hours.
 */
export function readingsOfRun(
  { line, doneOn, begunAtH }: Pick<SolderingRun, 'line' | 'doneOn' | 'begunAtH'>,
  logs: readonly LogSeries[],
  maxHours: number,
): RunReadings {
  const own = logsOfLine(line, logs)
  if (own === undefined) return { missing: 'line not named' }
  if (own.length === 0) return { missing: 'no log of its line' }
  const readings = own.flatMap((series): ReadingOfRun[] => {
    const [from, to] = spanOfRun({ doneOn, begunAtH }, series)
    const oldest = to - maxHours * MS_PER_HOUR
    const last = newestAtOrBefore(series.instants, to)
    if (last < 0 || !(series.instants[last]! >= oldest)) return []
    const ofTheDay: ReadingOfRun[] = []
    for (let at = last; at >= 0 && series.instants[at]! >= from; at--) ofTheDay.push({ series, at })
    return ofTheDay.length > 0 ? ofTheDay : [{ series, at: last }]
  })
  return readings.length > 0 ? { readings } : { missing: 'no reading in time' }
}

/** The instants between which a run began, for what it states of its hour. */
function spanOfRun(
  { doneOn, begunAtH }: Pick<SolderingRun, 'doneOn' | 'begunAtH'>,
  { log }: Pick<LogSeries, 'log'>,
): readonly [number, number] {
  if (begunAtH === undefined) return [dayBegins(log, doneOn), dayBegins(log, addDays(doneOn, 1)) - 1]
  const began = instantAtHour(log, doneOn, begunAtH)
  return [began, began]
}

/** Whether a run was made on the line or machine of a log; one that names none may have been. */
export function mayBeOfLog(
  { line }: Pick<SolderingRun, 'line'>,
  { log }: { readonly log: Pick<Log, 'line' | 'machine'> },
): boolean {
  if (line === undefined || line.trim() === '') return true
  const wanted = nameKey(line)
  return nameKey(log.line) === wanted || nameKey(log.machine) === wanted
}

const nameKey = (name: string): string => name.trim().replace(/\s+/g, ' ').toLowerCase()

/** The logs of a line or machine; undefined where the run names none and the logs are of several. */
function logsOfLine(line: string | undefined, logs: readonly LogSeries[]): LogSeries[] | undefined {
  if (line === undefined || line.trim() === '') {
    const lines = new Set(logs.map(({ log }) => nameKey(log.line)))
    return lines.size > 1 ? undefined : [...logs]
  }
  return logs.filter((series) => mayBeOfLog({ line }, series))
}

/** Place of the newest instant not after another, by halving; −1 where all are later. Instants ascend. */
function newestAtOrBefore(instants: readonly number[], instant: number): number {
  let [low, high] = [0, instants.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if (instants[middle]! <= instant) low = middle + 1
    else high = middle
  }
  return low - 1
}
