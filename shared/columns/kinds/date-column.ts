import type { DateColumn } from '@/shared/columns/column'
import type { ColumnKind } from '@/shared/columns/column-kind'
import { isDate } from '@/shared/quantity/is-date'

const SHAPE = /^\d{4}-\d{2}-\d{2}$/

const asItIs = (_column: DateColumn, value: unknown): string => String(value)

/** A day, as 2026-03-31. */
export const DATE_COLUMN: ColumnKind<DateColumn> = {
  schema: (make, { label }) =>
    make
      .string({ error: `${label} must be a date.` })
      .regex(SHAPE, `${label} must be a date such as 2026-03-31.`)
      .refine(isDate, `${label} is not a date of the calendar.`),
  fromTyped: (typed) => typed?.trim() || undefined,
  toTyped: String,
  fromSpreadsheet: (_column, text) => text,
  readingTest: () => (cell) => typeof cell === 'string' && SHAPE.test(cell) && isDate(cell),
  unit: () => undefined,
  inWords: asItIs,
  inSentence: asItIs,
  withoutLabel: asItIs,
}
