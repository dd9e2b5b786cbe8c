import { WORKS_FIELDS, type Fields } from '@/app/forms/works-in-form'
import { instantAtWorks, noInstantInWords, type NoInstant } from '@/shared/quantity/works-clock'
import { Refused } from '@/shared/refused'

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
