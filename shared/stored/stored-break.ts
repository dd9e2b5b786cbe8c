import type { TableName } from './covered-tables'

/** One column that is stored otherwise than recorded; long values by their hash. */
export interface ColumnDifference {
  readonly column: string
  readonly recorded: string
  readonly stored: string
}

/** Which row: the columns that tell it from others, as JSON texts. */
export type RowShown = Readonly<Record<string, string>>

/**
 * How what is stored can be at odds with what the entries say.
 *
 * - `changed`: a row says other than the entries that wrote it;
 * - `missing`: a row that an entry made is not there;
 * - `unrecorded`: a row is there that no entry made;
 * - `unreadable-entry`: an entry does not say what it wrote in any form known here;
 * - `file-missing`, `file-changed`: a file that an entry names is gone, or its bytes give another hash;
 * - `file-unreadable`: the store could not hand a file out;
 * - `works-head`: a trail of the works does not hold the entry that a gate was signed over;
 * - `file-register`: the register of files says other than the entry, or than the file.
 */
export type StoredBreak =
  | {
      readonly kind: 'changed'
      readonly table: TableName
      readonly row: RowShown
      readonly seq: number
      readonly differences: readonly ColumnDifference[]
    }
  | { readonly kind: 'missing'; readonly table: TableName; readonly row: RowShown; readonly seq: number }
  | { readonly kind: 'unrecorded'; readonly table: TableName; readonly row: RowShown }
  | { readonly kind: 'unreadable-entry'; readonly seq: number; readonly command: string }
  | {
      readonly kind: 'file-missing' | 'file-changed' | 'file-unreadable'
      readonly seq: number
      readonly sha256: string
    }
  | {
      readonly kind: 'works-head'
      readonly seq: number
      readonly of: { readonly kind: string; readonly code: string }
      readonly at: number
    }
  | {
      readonly kind: 'file-register'
      readonly seq: number
      readonly sha256: string
      readonly differences: readonly ColumnDifference[]
    }
