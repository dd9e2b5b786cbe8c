import type { Column, RowOf } from '@/shared/columns/column'
import type { Department } from '@/shared/plan/department'
import type { Stage } from '@/shared/plan/stage'
import type { WorksKind } from '@/shared/works/works-kind'

/**
 * A kind of record that needs no page of its own: training, cleanliness,
 * rework, electrical test, microsection. Its columns give the form, the CSV
 * mapping, the table and the type that rules read.
 */
export interface RecordKind<C extends Record<string, Column> = Record<string, Column>> {
  readonly key: string
  /** One record, as in "Add a training record". */
  readonly label: string
  readonly plural: string
  readonly help: string
  readonly stage: Stage
  readonly departments: readonly Department[]
  /** The column that names assemblies by serial number, for their lives; null where none does. */
  readonly assemblies: {
    readonly column: Extract<keyof C, string>
    /** Whether it always names one; else it may be a span, a list, or a batch. */
    readonly one: boolean
  } | null
  /** Whether it tells of something that went wrong or was put right, so that a lesson can be learnt from it. */
  readonly teaches: boolean
  readonly columns: C
  readonly cautions: readonly string[]
  /** What of the works keeps such records for all programmes; without it each programme keeps its own. */
  readonly keptAt?: WorksKind
}

/** The record a kind describes, with its id. */
export type RecordRow<K> = K extends RecordKind<infer C> ? RowOf<C> & { readonly id: string } : never

export const recordKind = <const K extends string, const C extends Record<string, Column>>(
  definition: RecordKind<C> & { readonly key: K },
): RecordKind<C> & { readonly key: K } => definition
