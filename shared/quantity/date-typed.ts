import { isDate } from './is-date'
import type { DateOrder } from './notation'

const YEAR_FIRST = /^(\d{4})([-./])\s?(\d{1,2})\2\s?(\d{1,2})\.?$/
const YEAR_LAST = /^(\d{1,2})([-./])\s?(\d{1,2})\2\s?(\d{4})\.?$/

/**
 * The day that a date in figures names, as 'YYYY-MM-DD': 2026-12-31 anywhere; 31.12.2026, 31/12/2026 or 31-12-2026
 * where the day comes first; 12/31/2026 or 12-31-2026 where the month does. Points part day and month in that
 * order only, so that 03.04.2026 is refused where the month comes first. Undefined for anything else, for a year of
 * two digits and for a day that does not exist.
 */
export function dateTyped(text: string, dates: DateOrder): string | undefined {
  const plain = text.trim()
  const byYear = YEAR_FIRST.exec(plain)
  if (byYear) return dayOf(byYear[1], byYear[3], byYear[4])
  const [, one, parting, other, year] = YEAR_LAST.exec(plain) ?? []
  if (dates === 'day first') return dayOf(year, other, one)
  return dates === 'month first' && parting !== '.' ? dayOf(year, one, other) : undefined
}

/** Whether a text is a date in figures but for its year, which has two digits. */
export const hasShortYear = (text: string): boolean =>
  /^\d{1,2}([-./])\s?\d{1,2}\1\s?\d{2}\.?$/.test(text.trim())

/** A day as it is written in figures, which `dateTyped` reads back. */
export function dateText(day: string, dates: DateOrder): string {
  const [year = '', month = '', date = ''] = day.split('-')
  switch (dates) {
    case 'year first':
      return day
    case 'day first':
      return `${date}.${month}.${year}`
    case 'month first':
      return `${month}/${date}/${year}`
  }
}

function dayOf(year = '', month = '', day = ''): string | undefined {
  const date = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`
  return isDate(date) ? date : undefined
}
