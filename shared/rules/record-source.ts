import type { Characteristic } from '@/shared/records/characteristic'
import type { Log } from '@/shared/records/log'
import type { ProgrammeRecords } from '@/shared/records/programme-records'
import type { RecordKindKey, RecordOf } from '@/shared/records/record-kinds'

/** A part of the programme's records that a rule reads. */
export interface RecordSource<T> {
  readonly source: 'records'
  readonly key: string
  readonly label: string
  readonly from: (records: ProgrammeRecords) => T
}

const source = <T>(key: string, label: string, from: (records: ProgrammeRecords) => T): RecordSource<T> => ({
  source: 'records',
  key,
  label,
  from,
})

export const lots = source('lots', 'lots and their tests', (records) => records.lots)
export const inspections = source('inspections', 'inspections', (records) => records.inspections)
export const instruments = source('instruments', 'instruments', (records) => records.instruments)

/** The logs of one process characteristic. */
export const logsOf = (characteristic: Characteristic): RecordSource<readonly Log[]> =>
  source(
    `logs:${characteristic.key}`,
    `log of ${characteristic.label}`,
    (records) => records.logs.get(characteristic.key) ?? NONE,
  )

/** All records of one kind, oldest first. */
export const recordsOf = <K extends RecordKindKey>(
  kind: K,
  label: string,
): RecordSource<readonly RecordOf<K>[]> =>
  source(`records:${kind}`, label, (records) => (records.byKind.get(kind) ?? NONE) as readonly RecordOf<K>[])

/** One shared empty list, so that "still none" compares equal by reference. */
const NONE: readonly never[] = []
