import { CalendarDate, GregorianCalendar } from '@internationalized/date'

/**
 * Dates of the Gregorian calendar, held as 'YYYY-MM-DD' in the years 1 to 9999, and instants as
 * epoch milliseconds. All in UTC: a programme's dates are agreed, not local. Dates of this form
 * sort as text. What would lie beyond either end of those years is told as that end, so that
 * arithmetic on a date that exists always gives a date that exists.
 */

export const MS_PER_HOUR = 3_600_000
export const MS_PER_DAY = 24 * MS_PER_HOUR
/** Days of a month on average, by the Julian year of 365.25 days. */
export const DAYS_PER_MONTH = 365.25 / 12
/** Hours in a month on average: 730.5. */
export const HOURS_PER_MONTH = DAYS_PER_MONTH * 24

const FIRST_DATE = '0001-01-01'
const LAST_DATE = '9999-12-31'
/** As many as the years 1 to 9999 have; the library goes through them one by one. */
const ALL_MONTHS = 12 * 9999
/** The Julian day number of 1970-01-01. */
const JULIAN_DAY_1970 = 2_440_588
const SHAPE = /^\d{4}-\d\d-\d\d$/
const gregorian = new GregorianCalendar()

/** The first instant of a date, in epoch milliseconds. Throws NoDate when it is no date. */
export const instantOf = (date: string): number => dayNumber(date) * MS_PER_DAY

/** The date on which an instant (epoch milliseconds) falls, in UTC. Throws RangeError when it is no number. */
export const dateOf = (instant: number | Date): string => dateOfDay(Math.floor(Number(instant) / MS_PER_DAY))

/** Whole days from one date to another; negative when the second is earlier. */
export const daysBetween = (from: string, to: string): number => dayNumber(to) - dayNumber(from)

/** The date so many whole days later (earlier when negative); parts of a day are cut off. */
export const addDays = (date: string, days: number): string => dateOfDay(dayNumber(date) + Math.trunc(days))

/** The same day so many months later; the month's last day where that day does not exist. */
export function addMonths(date: string, months: number): string {
  if (Number.isNaN(months)) throw new RangeError('A date cannot be counted from what is no number.')
  const count = Math.trunc(Math.min(ALL_MONTHS, Math.max(-ALL_MONTHS, months)))
  const later = read(date).add({ months: count }).toString()
  return later < FIRST_DATE ? FIRST_DATE : later
}

/** The first day of a week of the year by ISO 8601: 4 January always lies in week 1, and weeks begin on Monday. */
export function mondayOfWeek(year: number, week: number): string {
  const fourth = gregorian.toJulianDay(new CalendarDate(year, 1, 4))
  // Julian day numbers count from a Monday.
  return dateOfDay(fourth - (fourth % 7) + (week - 1) * 7 - JULIAN_DAY_1970)
}

/** Every month, as 'YYYY-MM', from that of one date to that of another, both included. */
export function monthsBetween(from: string, to: string): string[] {
  const [first, last] = [from, to].map((date) => 12 * Number(date.slice(0, 4)) + Number(date.slice(5, 7)) - 1)
  return Array.from({ length: Math.max(0, last! - first! + 1) }, (_, index) => {
    const month = first! + index
    return `${String(Math.floor(month / 12)).padStart(4, '0')}-${String((month % 12) + 1).padStart(2, '0')}`
  })
}

/** Thrown for text that should be a date and is none; its message is for people. */
export class NoDate extends RangeError {
  constructor(text: string) {
    super(`"${text}" is not a date of the calendar, such as 2026-03-31.`)
  }
}

/** The date that this text is. Throws NoDate when it is none. */
function read(text: string): CalendarDate {
  if (!SHAPE.test(text)) throw new NoDate(text)
  const date = new CalendarDate(Number(text.slice(0, 4)), Number(text.slice(5, 7)), Number(text.slice(8)))
  // A day or month that does not exist has been moved to the nearest that does.
  if (date.toString() !== text) throw new NoDate(text)
  return date
}

/** Days since 1970-01-01. */
const dayNumber = (date: string): number => gregorian.toJulianDay(read(date)) - JULIAN_DAY_1970

const FIRST_DAY = dayNumber(FIRST_DATE)
const LAST_DAY = dayNumber(LAST_DATE)

function dateOfDay(day: number): string {
  if (Number.isNaN(day)) throw new RangeError('A date cannot be counted from what is no number.')
  return gregorian.fromJulianDay(Math.min(LAST_DAY, Math.max(FIRST_DAY, day)) + JULIAN_DAY_1970).toString()
}
