import { dateOf, instantOf } from '@/shared/quantity/calendar'
import { isDate } from '@/shared/quantity/is-date'

const dayText = new Intl.DateTimeFormat('en-GB', {
  day: 'numeric',
  month: 'short',
  year: 'numeric',
  timeZone: 'UTC',
})
const monthText = new Intl.DateTimeFormat('en-GB', { month: 'short', year: 'numeric', timeZone: 'UTC' })
const clockText = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit', timeZone: 'UTC' })

/**
 * A calendar day: "12 Mar 2026". Takes a date, an ISO instant or a Date; the day is the UTC one. Text that is
 * no date of the calendar, as an earlier version let pass, is shown as it was typed.
 */
export function Day({ at }: { at: string | Date }) {
  const day = typeof at === 'string' ? at.slice(0, 10) : dateOf(at)
  if (!isDate(day)) return <>{day}</>
  return <time dateTime={day}>{dayText.format(instantOf(day))}</time>
}

/** A calendar month: "Mar 2026". Takes "2026-03". */
export function Month({ at }: { at: string }) {
  return <time dateTime={at}>{monthText.format(new Date(at))}</time>
}

/** A moment: "12 Mar 2026, 14:05 UTC". */
export const momentInWords = (at: string | Date): string =>
  `${dayText.format(new Date(at))}, ${clockText.format(new Date(at))} UTC`

export const Moment = ({ at }: { at: string | Date }) => (
  <time dateTime={new Date(at).toISOString()}>{momentInWords(at)}</time>
)
