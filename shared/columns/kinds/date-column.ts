import type { DateColumn } from '@/shared/columns/column'
import type { ColumnKind } from '@/shared/columns/column-kind'

const SHAPE = /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/
const isOfTheCalendar = (text: string): boolean => !Number.isNaN(Date.parse(`${text}T00:00:00Z`))

const asItIs = (_column: DateColumn, value: unknown): string => String(value)

/** A day, as 2026-03-31. */
export const DATE_COLUMN: ColumnKind<DateColumn> = {
  schema: (make, { label }) =>
    make
      .string({ error: `${label} must be a date.` })
      .regex(SHAPE, `${label} must be a date such as 2026-03-31.`)
      .refine(isOfTheCalendar, `${label} is not a date of the calendar.`),
  fromTyped: (typed) => typed?.trim() || undefined,
  toTyped: String,
  fromSpreadsheet: (_column, text) => text,
  readingTest: () => (cell) => typeof cell === 'string' && SHAPE.test(cell) && isOfTheCalendar(cell),
  unit: () => undefined,
  inWords: asItIs,
  inSentence: asItIs,
  withoutLabel: asItIs,
}
