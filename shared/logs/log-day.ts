import { instantOf, MS_PER_HOUR } from '@/shared/quantity/calendar'
import { momentInWords } from '@/shared/quantity/moment-in-words'
import { dateInZone, dayBeginsAt, zoneOffsetMs } from '@/shared/quantity/works-clock'
import type { Log } from '@/shared/records/log'

/** By whose clock the days of a log are told. */
export type Clock = Pick<Log, 'timeZone'>

const zoneOf = ({ timeZone = 'UTC' }: Clock): string => timeZone

/** The date of the works on which an instant (epoch milliseconds) of a log falls. */
export const dayOf = (log: Clock, instant: number): string => dateInZone(instant, zoneOf(log))

/** The instant, in epoch milliseconds, at which a date of the works begins. */
export const dayBegins = (log: Clock, date: string): number => dayBeginsAt(date, zoneOf(log))

/** '2026-03-04T10:11:12.345Z' as the works' clock showed it, to the minute, with the clock's name: "2026-03-04 10:11 UTC". */
export const minuteAtWorks = (log: Clock, instant: string): string =>
  momentInWords(Date.parse(instant), zoneOf(log))

/** The instant at which the works' clock shows so many hours after midnight of a date. */
export function instantAtHour(log: Clock, date: string, hours: number): number {
  const shown = instantOf(date) + hours * MS_PER_HOUR
  // The zone's distance is asked for near the instant itself, since it changes within a few days of the year.
  return shown - zoneOffsetMs(shown - zoneOffsetMs(shown, zoneOf(log)), zoneOf(log))
}
