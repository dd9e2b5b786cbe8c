import { dateAtWorks, works } from '@/lib/settings/works'
import { isDate } from '@/shared/quantity/is-date'
import { momentInWords as momentOfZone } from '@/shared/quantity/moment-in-words'

/**
 * A calendar day as ISO 8601 writes it, which is how every sentence writes it: "2026-03-12". Takes a date, or an instant (ISO text or a Date) for its day at the works. Text that is
 * no date of the calendar, as an earlier version let pass, is shown as it was typed.
 */
export function Day({ at }: { at: string | Date }) {
  const day = typeof at === 'string' && !at.includes('T') ? at : dateAtWorks(new Date(at))
  if (!isDate(day)) return <>{day}</>
  return <time dateTime={day}>{day}</time>
}

/** A calendar month: "2026-03". */
export function Month({ at }: { at: string }) {
  return <time dateTime={at}>{at}</time>
}

/** A moment by the works' clock: "2026-03-12 14:05 CET". */
export const momentInWords = (at: string | Date): string =>
  momentOfZone(new Date(at).getTime(), works().timeZone)

export const Moment = ({ at }: { at: string | Date }) => (
  <time dateTime={new Date(at).toISOString()}>{momentInWords(at)}</time>
)
