import { z } from 'zod'
import type { Unit } from '@/shared/quantity/unit'
import { calendarDate } from './calendar-date'
import { numberWanted } from './number-wanted'

/**
 * One typed field of a table parameter or of a record: enough to parse it, to
 * draw its form field, to map a CSV column to it and to print it.
 */
export type Column = NumberColumn | ChoiceColumn<string> | TextColumn | FlagColumn | DateColumn

interface ColumnBase {
  readonly label: string
  readonly help?: string
  readonly optional: boolean
}
export interface NumberColumn extends ColumnBase {
  readonly kind: 'number'
  readonly unit: Unit
  readonly min: number
  readonly max: number
  readonly whole: boolean
}
export interface ChoiceColumn<C extends string> extends ColumnBase {
  readonly kind: 'choice'
  readonly options: readonly { readonly value: C; readonly label: string }[]
}
export interface TextColumn extends ColumnBase {
  readonly kind: 'text'
  readonly maxLength: number
}
export interface FlagColumn extends ColumnBase {
  readonly kind: 'flag'
}
/** A calendar date, held as 'YYYY-MM-DD'. */
export interface DateColumn extends ColumnBase {
  readonly kind: 'date'
}

/** The value a column holds. */
export type CellOf<C extends Column> =
  | (C extends NumberColumn
      ? number
      : C extends ChoiceColumn<infer V>
        ? V
        : C extends FlagColumn
          ? boolean
          : string)
  | (C['optional'] extends false ? never : undefined)

/** The row a set of columns describes. */
export type RowOf<C extends Record<string, Column>> = { readonly [K in keyof C]: CellOf<C[K]> }

type Required<C extends Column> = C & { readonly optional: false }
type Optional<C extends Column> = Omit<C, 'optional'> & { readonly optional: true }

type NumberOptions = { label: string; unit: Unit; min: number; max: number; whole?: boolean; help?: string }
export const numberColumn = (options: NumberOptions): Required<NumberColumn> => ({
  ...options,
  kind: 'number',
  whole: options.whole ?? false,
  optional: false,
})
export const choiceColumn = <const C extends string>(options: {
  label: string
  options: readonly { value: C; label: string }[]
  help?: string
}): Required<ChoiceColumn<C>> => ({ ...options, kind: 'choice', optional: false })
export const textColumn = (options: {
  label: string
  maxLength?: number
  help?: string
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
export const dateColumn = (options: { label: string; help?: string }): Required<DateColumn> => ({
  ...options,
  kind: 'date',
  optional: false,
})
/** The same column, allowed to be left empty. */
export const optionalColumn = <C extends Column>(column: C): Optional<C> =>
  ({ ...column, optional: true }) as Optional<C>

/** The zod schema of one column; its messages are sentences for the person typing. */
export function columnSchema(column: Column): z.ZodType {
  const schema = requiredSchema(column)
  return column.optional ? schema.optional() : schema
}

function requiredSchema(column: Column): z.ZodType {
  switch (column.kind) {
    case 'number': {
      const unit = column.unit === '1' ? '' : ` ${column.unit}`
      const range = `${column.label} lies between ${column.min} and ${column.max}${unit}.`
      const number = z
        .number({ error: numberWanted(column.label) })
        .min(column.min, range)
        .max(column.max, range)
      return column.whole ? number.int(`${column.label} must be a whole number.`) : number
    }
    case 'choice':
      return z.enum(column.options.map((option) => option.value) as [string, ...string[]], {
        error: `${column.label}: choose one of the listed values.`,
      })
    case 'text':
      return z
        .string({ error: `${column.label} must be filled in.` })
        .trim()
        .min(1, `${column.label} must be filled in.`)
        .max(column.maxLength, `${column.label} has at most ${column.maxLength} characters.`)
    case 'flag':
      return z.boolean({ error: `${column.label} is yes or no.` })
    case 'date':
      return calendarDate(column.label)
  }
}

/** The zod schema of a whole row; unknown fields are refused. */
export const rowSchema = <C extends Record<string, Column>>(columns: C): z.ZodType<RowOf<C>> =>
  z.strictObject(
    Object.fromEntries(Object.entries(columns).map(([key, column]) => [key, columnSchema(column)])),
  ) as unknown as z.ZodType<RowOf<C>>
