import { calibrationStatus, type InstrumentFile } from '@/shared/instruments/calibration-status'
import { daysChecked } from '@/shared/logs/checks-on-schedule'
import { columnSeries } from '@/shared/logs/log-series'
import { addDays } from '@/shared/quantity/calendar'
import type { Log } from '@/shared/records/log'
import { dayBegins, dayOf } from '@/shared/logs/log-day'

/** Every day on which the store was read by an instrument in calibration then, ascending. */
export const daysRead = (logs: readonly Log[], file: InstrumentFile): string[] =>
  [...new Set(logs.flatMap((log) => daysChecked(log, oneADay(log), file)))].sort()

/** The last instant of each day on which a log was read; ascending, so that a day's end is worked out once. */
function oneADay(log: Log): number[] {
  const found: number[] = []
  let end = -Infinity
  for (const at of columnSeries(log, 'temperatureC').instants) {
    if (at < end) {
      found[found.length - 1] = at
      continue
    }
    end = dayBegins(log, addDays(dayOf(log, at), 1))
    found.push(at)
  }
  return found
}

/** Why a mean may not be believed: its instrument ran out on some day, or is not named so near to a limit. */
export function doubtOfStore(log: Log, isNear: boolean, file: InstrumentFile): string | undefined {
  if (log.instrumentId === null) return isNear ? 'so near to a limit the instrument must be named' : undefined
  const states = oneADay(log).map((at) => calibrationStatus(log.instrumentId, dayOf(log, at), file))
  const ill = states.find(({ stands }) => !stands)
  return ill && 'message' in ill ? ill.message : undefined
}
