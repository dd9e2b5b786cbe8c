import type { CharacteristicKey } from '@/shared/records/characteristics'
import type { Instrument } from '@/shared/records/instrument'
import type { Log } from '@/shared/records/log'
import type { RecordOf } from '@/shared/records/record-kinds'
import { run } from './record-builder'

/** A log of a characteristic from rows as a person would type them: an ISO instant and the cells. */
export function logOf(
  characteristic: CharacteristicKey,
  rows: readonly ({ at: string } & Record<string, number | string | undefined>)[],
  over: Partial<Log> = {},
): Log {
  const names = [...new Set(rows.flatMap((row) => Object.keys(row)))].filter((name) => name !== 'at')
  return {
    id: `log-${characteristic}`,
    code: 'L-1',
    characteristic,
    line: 'line 1',
    machine: 'machine 1',
    instrumentId: 'instrument-1',
    readings: {
      count: rows.length,
      columns: {
        at: rows.map((row) => Date.parse(row.at)),
        ...Object.fromEntries(names.map((name) => [name, rows.map((row) => row[name] ?? null)])),
      },
    },
    ...over,
  }
}

/** The instrument that `logOf` names, in calibration through 2026. */
export const INSTRUMENT: Instrument = {
  id: 'instrument-1',
  tag: 'I-1',
  measures: 'everything in these tests',
  calibratedOn: '2026-01-05',
  dueOn: '2027-01-05',
  certificate: 'C-1',
  outOfUse: false,
}

/** An answer to an excursion or signal of the log that `logOf` builds. */
export const answer = (over: Partial<RecordOf<'signal-answer'>>): RecordOf<'signal-answer'> => ({
  id: 'answer-1',
  log: 'L-1',
  chartRule: 'outside-window',
  readingAt: '2026-02-01T08:00:00Z',
  answer: 'cause-removed',
  cause: 'Lid left open over the weekend.',
  action: 'Tank renewed; the boards of that day went to cleaning.',
  by: 'A. Ward',
  on: '2026-02-02',
  ...over,
})

/** Records of boards soldered by machine on the line that `logOf` builds; on 2 February 2026 unless told. */
export const worked = (
  ...over: readonly Partial<RecordOf<'soldering-run'>>[]
): { readonly 'soldering-run': readonly RecordOf<'soldering-run'>[] } => ({
  'soldering-run': (over.length > 0 ? over : [{}]).map((one, index) =>
    run(10, { id: `run-${index}`, doneOn: '2026-02-02', line: 'line 1', ...one }),
  ),
})
