import { dateTyped, hasShortYear } from '@/shared/quantity/date-typed'
import { isDate } from '@/shared/quantity/is-date'
import type { DateColumn } from '../column'
import type { ColumnKind, SchemaMaker } from '../column-kind'

/** No record, plan or part of ours is older, and nothing is planned beyond: another year is a slip of the keys. */
const FIRST_DAY = '1900-01-01'
const LAST_DAY = '2199-12-31'
const isInReach = (day: string): boolean => day >= FIRST_DAY && day <= LAST_DAY

/** A date that exists and that a record can bear, as 'YYYY-MM-DD'; `what` begins each refusal, as in "The due date must be a date.". */
export const dateSchema = (make: Pick<SchemaMaker, 'string'>, what: string) =>
  make
    .string({ error: `${what} must be a date.` })
    .regex(/^\d{4}-\d{2}-\d{2}$/, { error: ({ input }) => noDate(what, String(input)) })
    .refine(isDate, `${what} is not a date of the calendar.`)
    .refine(isInReach, `${what} lies between ${FIRST_DAY} and ${LAST_DAY}.`)

const noDate = (what: string, typed: string): string =>
  hasShortYear(typed)
    ? `${what}: write the year of ${typed} with four digits.`
    : `${what} must be a date such as 2026-03-31.`

const asItIs = (_column: DateColumn, value: unknown): string => String(value)

/** A day, as 2026-03-31. */
export const DATE_COLUMN: ColumnKind<DateColumn> = {
  schema: (make, { label }) => dateSchema(make, label),
  fromTyped(_column, typed, { dates }) {
    const text = typed?.trim() ?? ''
    return text ? (dateTyped(text, dates) ?? text) : undefined
  },
  // The browser's own box of a date takes and gives this form only, however it shows it.
  toTyped: (_column, value) => String(value),
  fromSpreadsheet: (_column, text, { dates }) => dateTyped(text, dates) ?? '',
  readingTest: () => (cell) => typeof cell === 'string' && isDate(cell) && isInReach(cell),
  unit: () => undefined,
  inWords: asItIs,
  inSentence: asItIs,
  withoutLabel: asItIs,
}
