import { calibrationStatus, type InstrumentFile } from '@/shared/instruments/calibration-status'
import { daysChecked } from '@/shared/logs/checks-on-schedule'
import { columnSeries } from '@/shared/logs/log-series'
import { dateOf } from '@/shared/quantity/calendar'
import type { Log } from '@/shared/records/log'

/** Every day on which the store was read by an instrument in calibration then, ascending. */
export const daysRead = (logs: readonly Log[], file: InstrumentFile): string[] =>
  [...new Set(logs.flatMap((log) => daysChecked(log, oneADay(log), file)))].sort()

/** One instant of each day on which a log was read. */
const oneADay = (log: Log): number[] => [
  ...new Map(columnSeries(log, 'temperatureC').instants.map((at) => [dateOf(at), at])).values(),
]

/** Why a mean may not be believed: its instrument ran out on some day, or is not named so near to a limit. */
export function doubtOfStore(log: Log, isNear: boolean, file: InstrumentFile): string | undefined {
  if (log.instrumentId === null) return isNear ? 'so near to a limit the instrument must be named' : undefined
  const states = oneADay(log).map((at) => calibrationStatus(log.instrumentId, dateOf(at), file))
  const ill = states.find(({ stands }) => !stands)
  return ill && 'message' in ill ? ill.message : undefined
}
