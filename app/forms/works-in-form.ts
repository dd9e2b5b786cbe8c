import { DATE_ORDERS, type Notation } from '@/shared/quantity/notation'

/** Names of the hidden fields that say how the boxes of a form are filled in; no command has a part of that name. */
export const WORKS_FIELDS = {
  timeZone: 'written.timeZone',
  decimal: 'written.decimal',
  dates: 'written.dates',
} as const

/** A form, or the part of an address after "?". */
export type Fields = Pick<URLSearchParams | FormData, 'get'>

/** How the boxes of this form are filled in: a point and dates by ISO 8601 where it does not say. */
export const notationIn = (form: Fields): Notation => ({
  decimal: form.get(WORKS_FIELDS.decimal) === ',' ? ',' : '.',
  dates: DATE_ORDERS.find((order) => order === form.get(WORKS_FIELDS.dates)) ?? 'year first',
})
