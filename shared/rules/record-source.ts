import type { Characteristic } from '@/shared/records/characteristic'
import type { Log } from '@/shared/records/log'
import type { ProgrammeRecords } from '@/shared/records/programme-records'
import type { RecordKindKey, RecordOf } from '@/shared/records/record-kinds'
import { recordsOfKind } from '@/shared/records/records-of-kind'

/** A part of the programme's records that a rule reads. */
export interface RecordSource<T> {
  readonly source: 'records'
  readonly key: string
  readonly part: RecordPart
  readonly label: string
  readonly from: (records: ProgrammeRecords) => T
}

/** Which part, for a screen to show it and to lead there. */
export type RecordPart =
  | { readonly is: 'lots' | 'deliveries' | 'inspections' | 'instruments' | 'parts' | 'all logs' }
  | { readonly is: 'logs'; readonly of: string }
  | { readonly is: 'records'; readonly of: RecordKindKey }

const source = <T>(
  part: RecordPart,
  key: string,
  label: string,
  from: (records: ProgrammeRecords) => T,
): RecordSource<T> => ({ source: 'records', key, part, label, from })

export const lots = source({ is: 'lots' }, 'lots', 'lots and their tests', (records) => records.lots)
export const deliveries = source(
  { is: 'deliveries' },
  'deliveries',
  'other lots of the same suppliers and parts',
  (records) => records.deliveries,
)
export const inspections = source(
  { is: 'inspections' },
  'inspections',
  'inspections',
  (records) => records.inspections,
)
export const instruments = source(
  { is: 'instruments' },
  'instruments',
  'instruments',
  (records) => records.instruments,
)

/** The parts of the works that the parts list names, each as it is described today. */
export const partsOfTheWorks = source(
  { is: 'parts' },
  'parts',
  'parts of the works',
  (records) => records.parts,
)

/** Every log of the programme, by characteristic. */
export const allLogs = source({ is: 'all logs' }, 'logs', 'process logs', (records) => records.logs)

/** The logs of one process characteristic. */
export const logsOf = (characteristic: Characteristic): RecordSource<readonly Log[]> =>
  source(
    { is: 'logs', of: characteristic.key },
    `logs:${characteristic.key}`,
    `log of ${characteristic.label}`,
    (records) => records.logs.get(characteristic.key) ?? NONE,
  )

/** All records of one kind, oldest first. */
export const recordsOf = <K extends RecordKindKey>(
  kind: K,
  label: string,
): RecordSource<readonly RecordOf<K>[]> =>
  source({ is: 'records', of: kind }, `records:${kind}`, label, (records) => recordsOfKind(records, kind))

/** One shared empty list, so that "still none" compares equal by reference. */
const NONE: readonly never[] = []
