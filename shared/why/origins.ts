import type { ChangeNotice } from '@/shared/gate/change-notice'
import type { OptionStudy } from '@/shared/gate/option-study'
import type { Correction } from '@/shared/records/correction'

/** A revision of a value as it is stored. */
export interface RevisionOrigin {
  readonly number: number
  readonly value: unknown
  readonly reason: string
  readonly author: string
  readonly at: string
  /** The change notice that brought it. */
  readonly notice: number | null
}

/** Who stated a requirement on a limit, and how. */
export interface RequirementOrigin {
  readonly id: string
  readonly reason: string
  readonly author: string
  readonly at: string
  readonly notice: number | null
  /** The company rule that was taken over with it. */
  readonly companyRule: string | null
}

/** Readings that came at once. */
export interface BatchOrigin {
  readonly id: string
  readonly count: number
  /** The file they came from, when they came from one. */
  readonly sha256: string | null
  readonly by: string
  readonly at: string
}

/** Who recorded a row, and when. */
export interface RecordedBy {
  readonly name: string
  readonly at: string
}

/** All that is stored of how a programme's facts came about, as far as a chain asks for it. */
export interface Origins {
  /** By parameter, newest first. */
  readonly revisions: ReadonlyMap<string, readonly RevisionOrigin[]>
  /** By the requirement's id. */
  readonly requirements: ReadonlyMap<string, RequirementOrigin>
  readonly studies: readonly OptionStudy[]
  readonly notices: readonly ChangeNotice[]
  /** Lots, their tests, logs, inspections and records, by id. */
  readonly recorded: ReadonlyMap<string, RecordedBy>
  /** By the id of the test or the log. */
  readonly batches: ReadonlyMap<string, readonly BatchOrigin[]>
  /** By the id of what was corrected, oldest first. */
  readonly corrections: ReadonlyMap<string, readonly Correction[]>
}
