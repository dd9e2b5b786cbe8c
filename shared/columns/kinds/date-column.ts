import { isDate } from '@/shared/quantity/is-date'
import type { DateColumn } from '../column'
import type { ColumnKind, SchemaMaker } from '../column-kind'

/** A date that exists, as 'YYYY-MM-DD'; `what` begins each refusal, as in "The due date must be a date.". */
export const dateSchema = (make: Pick<SchemaMaker, 'string'>, what: string) =>
  make
    .string({ error: `${what} must be a date.` })
    .regex(/^\d{4}-\d{2}-\d{2}$/, `${what} must be a date such as 2026-03-31.`)
    .refine(isDate, `${what} is not a date of the calendar.`)

const asItIs = (_column: DateColumn, value: unknown): string => String(value)

/** A day, as 2026-03-31. */
export const DATE_COLUMN: ColumnKind<DateColumn> = {
  schema: (make, { label }) => dateSchema(make, label),
  fromTyped: (typed) => typed?.trim() || undefined,
  toTyped: String,
  fromSpreadsheet: (_column, text) => text,
  readingTest: () => (cell) => typeof cell === 'string' && isDate(cell),
  unit: () => undefined,
  inWords: asItIs,
  inSentence: asItIs,
  withoutLabel: asItIs,
}
