import type { DateOrder, Notation } from '@/shared/quantity/notation'
import { instantAtWorks, noInstantInWords, type NoInstant } from '@/shared/quantity/works-clock'
import { Refused } from '@/shared/refused'

/** Names of the hidden fields that say how the boxes of a form are filled in. */
export const WORKS_FIELDS = {
  timeZone: 'works.timeZone',
  decimal: 'works.decimal',
  dates: 'works.dates',
} as const

/** A form, or the part of an address after "?". */
type Fields = Pick<URLSearchParams | FormData, 'get'>

const ORDERS: readonly DateOrder[] = ['year first', 'day first', 'month first']

/** How the boxes of this form are filled in: a point and dates by ISO 8601 where it does not say. */
export const notationIn = (form: Fields): Notation => ({
  decimal: form.get(WORKS_FIELDS.decimal) === ',' ? ',' : '.',
  dates: ORDERS.find((order) => order === form.get(WORKS_FIELDS.dates)) ?? 'year first',
})

/** The instant (epoch milliseconds) of a box of date and time, by the clock of the works that the form names; or why there is none, in a sentence. */
export function instantTyped(form: Fields, name: string): number | { readonly message: string } {
  const zone = form.get(WORKS_FIELDS.timeZone)
  const timeZone = typeof zone === 'string' && zone !== '' ? zone : 'UTC'
  const typed = String(form.get(name) ?? '').trim()
  const found = atWorks(typed, timeZone)
  return typeof found === 'number' ? found : { message: noInstantInWords(found, typed, timeZone) }
}

/** The same, or a refusal at that box. Errors: Refused. */
export function instantInForm(form: Fields, name: string): number {
  const found = instantTyped(form, name)
  if (typeof found === 'number') return found
  throw new Refused(found.message, { [name]: found.message })
}

/** A zone that the browser made up is no zone: then there is no time. */
function atWorks(typed: string, timeZone: string): number | NoInstant {
  try {
    return instantAtWorks(typed, timeZone)
  } catch {
    return 'no time'
  }
}
