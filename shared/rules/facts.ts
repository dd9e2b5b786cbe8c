import type { Requirement } from '@/shared/plan/requirement'
import type { ProgrammeRecords } from '@/shared/records/programme-records'

/**
 * Everything rules may look at. An unchanged part keeps its identity from one
 * `Facts` to the next: re-judging compares inputs by reference.
 */
export interface Facts {
  /** The current value of every parameter that has one, by parameter key. */
  readonly values: ReadonlyMap<string, unknown>
  readonly requirements: readonly Requirement[]
  readonly records: ProgrammeRecords
  /** 'YYYY-MM-DD' */
  readonly today: string
}
