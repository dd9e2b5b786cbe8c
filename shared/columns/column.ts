import type { RangeText } from '@/shared/quantity/range-text'
import type { Unit } from '@/shared/quantity/unit'

/**
 * One typed field of a table parameter or of a record, as it is declared. What
 * is done with it (parse, show, print, …) its kind knows: see COLUMN_KINDS.
 */
export type Column = NumberColumn | RangeColumn | ChoiceColumn<string> | TextColumn | FlagColumn | DateColumn

interface ColumnBase {
  readonly label: string
  readonly help?: string
  /** Other headings that mean it in a file of readings. */
  readonly alsoCalled?: readonly string[]
  readonly optional: boolean
}
export interface NumberColumn extends ColumnBase {
  readonly kind: 'number'
  readonly unit: Unit
  readonly min: number
  readonly max: number
  readonly whole: boolean
}
/** A number, or a range from one to another where it is known no better. */
export interface RangeColumn extends ColumnBase {
  readonly kind: 'range'
  readonly unit: Unit
  readonly min: number
  readonly max: number
}
export interface ChoiceColumn<C extends string> extends ColumnBase {
  readonly kind: 'choice'
  readonly options: readonly { readonly value: C; readonly label: string }[]
}
/** What a text is stored as: the name of a signal, an instant. A name, since columns travel to the browser. */
export type StoredAs = 'signal' | 'instant'

export interface TextColumn extends ColumnBase {
  readonly kind: 'text'
  readonly maxLength: number
  /** It holds a number or a range of numbers, which are typed as the works writes them. */
  readonly figures?: boolean
  /** It holds what something is stored under, which people read in other words. */
  readonly told?: StoredAs
}
export interface FlagColumn extends ColumnBase {
  readonly kind: 'flag'
}
/** A calendar date, held as 'YYYY-MM-DD'. */
export interface DateColumn extends ColumnBase {
  readonly kind: 'date'
  /** In a record: a day to come, such as when something is due; else what is recorded has happened. */
  readonly mayLieAhead: boolean
}

export type ColumnKindName = Column['kind']
/** The columns of one kind. */
export type ColumnOf<K extends ColumnKindName> = Extract<Column, { readonly kind: K }>

/** What a cell of each kind holds: always one plain value, so that two cells are alike exactly when they are identical. */
interface CellByKind {
  number: number
  range: number | RangeText
  choice: string
  text: string
  flag: boolean
  date: string
}
export type Cell = CellByKind[ColumnKindName]

/** The value a column holds. */
export type CellOf<C extends Column> =
  | (C extends ChoiceColumn<infer V> ? V : CellByKind[C['kind']])
  | (C['optional'] extends false ? never : undefined)

/** The row a set of columns describes. */
export type RowOf<C extends Record<string, Column>> = { readonly [K in keyof C]: CellOf<C[K]> }

type Required<C extends Column> = C & { readonly optional: false }
type Optional<C extends Column> = Omit<C, 'optional'> & { readonly optional: true }

type NumberOptions = {
  label: string
  unit: Unit
  min: number
  max: number
  whole?: boolean
  help?: string
  alsoCalled?: readonly string[]
}
export const numberColumn = (options: NumberOptions): Required<NumberColumn> => ({
  ...options,
  kind: 'number',
  whole: options.whole ?? false,
  optional: false,
})
export const rangeColumn = (
  options: Pick<NumberOptions, 'label' | 'unit' | 'min' | 'max' | 'help'>,
): Required<RangeColumn> => ({ ...options, kind: 'range', optional: false })
export const choiceColumn = <const C extends string>(options: {
  label: string
  options: readonly { value: C; label: string }[]
  help?: string
}): Required<ChoiceColumn<C>> => ({ ...options, kind: 'choice', optional: false })
export const textColumn = (options: {
  label: string
  maxLength?: number
  help?: string
  figures?: boolean
  told?: StoredAs
  alsoCalled?: readonly string[]
}): Required<TextColumn> => ({
  ...options,
  kind: 'text',
  maxLength: options.maxLength ?? 120,
  optional: false,
})
export const flagColumn = (options: { label: string; help?: string }): Required<FlagColumn> => ({
  ...options,
  kind: 'flag',
  optional: false,
})
export const dateColumn = (options: {
  label: string
  help?: string
  mayLieAhead?: boolean
}): Required<DateColumn> => ({
  ...options,
  kind: 'date',
  mayLieAhead: options.mayLieAhead ?? false,
  optional: false,
})
/** The same column, allowed to be left empty. */
export const optionalColumn = <C extends Column>(column: C): Optional<C> =>
  ({ ...column, optional: true }) as Optional<C>
