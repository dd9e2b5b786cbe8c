import { dateOf, instantOf } from './calendar'
import {
  fromAbsolute,
  parseDate,
  parseDateTime,
  toCalendarDate,
  toCalendarDateTime,
} from '@internationalized/date'

/*
 * The clock on the wall of a works, by the IANA name of its time zone. Instants are epoch milliseconds; a wall
 * time is 'YYYY-MM-DDTHH:mm', with seconds and their parts where there are any, and no zone.
 */

/** Whether a text is the IANA name of a time zone that the platform knows. */
export function isTimeZone(name: string): boolean {
  try {
    new Intl.DateTimeFormat('en', { timeZone: name })
    return true
  } catch {
    return false
  }
}

/** The date that the works' calendar shows at an instant. */
export const dateInZone = (instant: number | Date, timeZone: string): string =>
  timeZone === 'UTC' ? dateOf(instant) : toCalendarDate(fromAbsolute(Number(instant), timeZone)).toString()

/** The instant at which a date, 'YYYY-MM-DD', begins on the works' calendar; where its midnight is skipped, right after. */
export const dayBeginsAt = (date: string, timeZone: string): number =>
  timeZone === 'UTC' ? instantOf(date) : parseDate(date).toDate(timeZone).getTime()

/** What the works' clock shows at an instant, to the second: '2026-03-04T10:11:12'. */
export const wallTimeOf = (instant: number, timeZone: string): string =>
  toCalendarDateTime(fromAbsolute(Math.floor(instant / 1000) * 1000, timeZone)).toString()

/** How far ahead of UTC the works' clock is at an instant, in milliseconds. */
export const zoneOffsetMs = (instant: number, timeZone: string): number =>
  timeZone === 'UTC' ? 0 : fromAbsolute(instant, timeZone).offset

/** Why a wall time names no one instant: no such time is shown that day, or it is shown twice; or it is no time at all. */
export type NoInstant = 'skipped' | 'twice' | 'no time'

/** The instant at which the works' clock shows a time, or why there is no one such instant. */
export function instantAtWorks(wallTime: string, timeZone: string): number | NoInstant {
  const time = readWallTime(wallTime)
  if (!time) return 'no time'
  const [earlier, later] = [
    time.toDate(timeZone, 'earlier').getTime(),
    time.toDate(timeZone, 'later').getTime(),
  ]
  if (earlier === later) return earlier
  // Of a time that is skipped the library gives the times before and after the gap, which show another time.
  return wallTimeOf(earlier, timeZone) === time.set({ millisecond: 0 }).toString() ? 'twice' : 'skipped'
}

/** Why a time cannot be taken, and what to do, for whoever typed it. */
export function noInstantInWords(why: NoInstant, wallTime: string, timeZone: string): string {
  const said = wallTime.replace('T', ' ')
  switch (why) {
    case 'skipped':
      return `There is no ${said} in ${timeZone}: the clocks were put forward over it. Give the time that the clock showed.`
    case 'twice':
      return `${said} comes twice in ${timeZone}, since the clocks were put back. Give it with its distance from UTC, or a time outside that hour.`
    case 'no time':
      return 'Give the date and the time of day.'
  }
}

function readWallTime(text: string) {
  try {
    return parseDateTime(text)
  } catch {
    return undefined
  }
}
