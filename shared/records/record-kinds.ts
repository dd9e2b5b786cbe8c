import type { RecordRow } from './record-kind'

/** Every kind of record, by key. A new kind is added here and nowhere else. */
export const RECORD_KINDS = {} as const
export type RecordKindKey = keyof typeof RECORD_KINDS
export type RecordOf<K extends RecordKindKey> = RecordRow<(typeof RECORD_KINDS)[K]>
