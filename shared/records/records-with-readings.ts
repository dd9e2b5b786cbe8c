import type { Log } from './log'
import type { ProgrammeRecords } from './programme-records'
import { joinReadings, type Readings } from './readings'
import { sortedByTime } from './time-order'

/** The programme's records as they would be with these readings in a log; for judging before anything is stored. */
export function recordsWithReadings(
  records: ProgrammeRecords,
  log: Log,
  readings: Readings,
): ProgrammeRecords {
  const grown: Log = { ...log, readings: sortedByTime(joinReadings([log.readings, readings])) }
  const logs = (records.logs.get(log.characteristic) ?? []).map((one) => (one.id === log.id ? grown : one))
  return { ...records, logs: new Map(records.logs).set(log.characteristic, logs) }
}
