import { dateAtWorks, works } from '@/lib/settings/works'
import { memoByText } from '@/shared/memo'
import { instantOf } from '@/shared/quantity/calendar'
import { isDate } from '@/shared/quantity/is-date'

const dayText = new Intl.DateTimeFormat('en-GB', {
  day: 'numeric',
  month: 'short',
  year: 'numeric',
  timeZone: 'UTC',
})
const monthText = new Intl.DateTimeFormat('en-GB', { month: 'short', year: 'numeric', timeZone: 'UTC' })

/** Made once for a zone: making one costs more than what it formats. */
const momentText = memoByText(
  4,
  (timeZone: string) => timeZone,
  (timeZone: string) =>
    new Intl.DateTimeFormat('en-GB', {
      day: 'numeric',
      month: 'short',
      year: 'numeric',
      hour: '2-digit',
      minute: '2-digit',
      timeZoneName: 'short',
      timeZone,
    }),
)

/**
 * A calendar day: "12 Mar 2026". Takes a date, or an instant (ISO text or a Date) for its day at the works. Text that is
 * no date of the calendar, as an earlier version let pass, is shown as it was typed.
 */
export function Day({ at }: { at: string | Date }) {
  const day = typeof at === 'string' && !at.includes('T') ? at : dateAtWorks(new Date(at))
  if (!isDate(day)) return <>{day}</>
  return <time dateTime={day}>{dayText.format(instantOf(day))}</time>
}

/** A calendar month: "Mar 2026". Takes "2026-03". */
export function Month({ at }: { at: string }) {
  return <time dateTime={at}>{monthText.format(new Date(at))}</time>
}

/** A moment by the works' clock: "12 Mar 2026, 14:05 CET". */
export const momentInWords = (at: string | Date): string => momentText(works().timeZone).format(new Date(at))

export const Moment = ({ at }: { at: string | Date }) => (
  <time dateTime={new Date(at).toISOString()}>{momentInWords(at)}</time>
)
