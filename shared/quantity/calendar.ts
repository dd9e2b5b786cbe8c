/**
 * Dates of the calendar held as 'YYYY-MM-DD', and instants as epoch
 * milliseconds. All in UTC: a programme's dates are agreed, not local.
 */

const MS_A_DAY = 86_400_000
const SHAPE = /^(\d{4})-(\d{2})-(\d{2})$/

/** True for a date that exists: '2028-02-29' is one, '2027-02-29' is not. */
export function isDate(text: string): boolean {
  const parts = SHAPE.exec(text)
  if (!parts) return false
  const ms = Date.UTC(Number(parts[1]), Number(parts[2]) - 1, Number(parts[3]))
  return new Date(ms).toISOString().slice(0, 10) === text
}

/** The first instant of a date, in epoch milliseconds. Throws RangeError when it is no date. */
export function instantOf(date: string): number {
  if (!isDate(date)) throw new RangeError(`"${date}" is not a date such as 2026-03-31.`)
  return Date.parse(`${date}T00:00:00Z`)
}

/** The date on which an instant (epoch milliseconds) falls, in UTC. */
export function dateOf(instant: number): string {
  if (!Number.isFinite(instant)) throw new RangeError('An instant must be a number of milliseconds.')
  return new Date(instant).toISOString().slice(0, 10)
}

/** Whole days from one date to another; negative when the second is earlier. */
export const daysBetween = (from: string, to: string): number => (instantOf(to) - instantOf(from)) / MS_A_DAY

/** The date so many whole days later (earlier when negative). */
export const addDays = (date: string, days: number): string =>
  dateOf(instantOf(date) + Math.trunc(days) * MS_A_DAY)

/** The same day so many months later; the month's last day where that day does not exist. */
export function addMonths(date: string, months: number): string {
  const start = new Date(instantOf(date))
  const month = start.getUTCMonth() + Math.trunc(months)
  const lastDay = new Date(Date.UTC(start.getUTCFullYear(), month + 1, 0)).getUTCDate()
  return dateOf(Date.UTC(start.getUTCFullYear(), month, Math.min(start.getUTCDate(), lastDay)))
}

/** True when `date` lies in [from, to], ends included. Dates of this form sort as text. */
export const isWithin = (date: string, from: string, to: string): boolean => from <= date && date <= to
