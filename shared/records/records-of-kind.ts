import type { ProgrammeRecords } from './programme-records'
import type { RecordKindKey, RecordOf } from './record-kinds'

/** The records of one kind, oldest first, typed as their kind declares them. */
export const recordsOfKind = <K extends RecordKindKey>(
  { byKind }: Pick<ProgrammeRecords, 'byKind'>,
  kind: K,
): readonly RecordOf<K>[] => (byKind.get(kind) ?? NONE) as readonly RecordOf<K>[]

/** One shared empty list, so that "still none" compares equal by reference. */
const NONE: readonly never[] = []
