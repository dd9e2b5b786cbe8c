import { momentInWords } from '@/shared/quantity/moment-in-words'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import reference from '../../reference/quantity/calendar.json'
import {
  addDays,
  addMonths,
  dateOf,
  daysBetween,
  instantOf,
  MS_PER_DAY,
  mondayOfWeek,
  monthsBetween,
  NoDate,
} from '@/shared/quantity/calendar'
import { isDate } from '@/shared/quantity/is-date'

/** Days of each month of a year that is not a leap year, and the rule of leap years: RFC 3339 section 5.7 and appendix C. */
const MONTH_LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]
const isLeapYear = (year: number): boolean => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0)
const lastDay = (year: number, month: number): number =>
  month === 2 && isLeapYear(year) ? 29 : MONTH_LENGTHS[month - 1]!

const text = (year: number, month: number, day: number): string =>
  `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`

describe('dates of the calendar', () => {
  test.each([
    ['2028-02-29', true],
    ['2027-02-29', false],
    ['2100-02-29', false],
    ['2000-02-29', true],
    ['2026-02-30', false],
    ['2026-04-31', false],
    ['2026-13-01', false],
    ['2026-00-01', false],
    ['2026-01-00', false],
    ['2026-1-01', false],
    ['0001-01-01', true],
    ['9999-12-31', true],
    ['0000-01-01', false],
    ['10000-01-01', false],
    ['+002026-01-01', false],
    ['2026-01-01T00:00:00Z', false],
    ['２０２６-01-01', false],
    ['', false],
  ])('%s is a date: %s', (date, is) => {
    expect(isDate(date)).toBe(is)
    if (is) expect(dateOf(instantOf(date))).toBe(date)
    else expect(() => instantOf(date)).toThrow(NoDate)
  })

  test('every day that the rule of RFC 3339 gives a month exists, and none after it', () => {
    for (let year = 1; year <= 9998; year += year < 1580 || year > 2420 ? 97 : 1) {
      for (let month = 1; month <= 12; month++) {
        const last = lastDay(year, month)
        expect(isDate(text(year, month, last)), text(year, month, last)).toBe(true)
        expect(isDate(text(year, month, last + 1)), text(year, month, last + 1)).toBe(false)
        expect(addDays(text(year, month, last), 1), text(year, month, last)).toBe(
          month === 12 ? text(year + 1, 1, 1) : text(year, month + 1, 1),
        )
      }
    }
  })

  test('what is no date is refused with a sentence', () => {
    expect(() => instantOf('31.03.2026')).toThrow(/2026-03-31/)
    expect(() => instantOf('2026-02-30')).toThrow('"2026-02-30" is not a date of the calendar')
    expect(() => dateOf(Number.NaN)).toThrow(RangeError)
    expect(() => addDays('2026-01-01', Number.NaN)).toThrow(RangeError)
    expect(() => addMonths('2026-01-01', Number.NaN)).toThrow(RangeError)
  })
})

describe('counting days', () => {
  test('1970-01-01 is the epoch, and 2000-03-01 lies 11,017 days after it', () => {
    expect(instantOf('1970-01-01')).toBe(0)
    expect(daysBetween('1970-01-01', '2000-03-01')).toBe(11_017)
  })

  // The Modified Julian Date counts from 1858-11-17; the epoch J2000.0, noon of 2000-01-01, is 51,544.5 by it
  // (International Astronomical Union, from memory).
  test('2000-01-01 is day 51,544 of the Modified Julian Date', () => {
    expect(addDays('1858-11-17', 51_544)).toBe('2000-01-01')
  })

  test('a year spans 365 days, a leap year 366, and 400 years 146,097', () => {
    expect(daysBetween('2026-01-01', '2027-01-01')).toBe(365)
    expect(daysBetween('2028-01-01', '2029-01-01')).toBe(366)
    expect(daysBetween('1600-02-29', '2000-02-29')).toBe(146_097)
  })

  test.each(reference.days)('from $from to $to are $days days', ({ from, to, days }) => {
    expect(daysBetween(from, to)).toBe(days)
    expect(addDays(from, days)).toBe(to)
  })

  test('each day of the calendar is the one after the day before', () => {
    let before = instantOf('1996-12-31')
    for (let year = 1997; year <= 2004; year++)
      for (let month = 1; month <= 12; month++)
        for (let day = 1; day <= lastDay(year, month); day++) {
          expect(instantOf(text(year, month, day))).toBe(before + MS_PER_DAY)
          expect(dateOf(before + 2 * MS_PER_DAY - 1)).toBe(text(year, month, day))
          before += MS_PER_DAY
        }
  })

  test('adding days and counting them undo each other', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -700_000, max: 2_900_000 }),
        fc.integer({ min: -9999, max: 9999 }),
        (start, days) => {
          const date = dateOf(start * MS_PER_DAY)
          expect(daysBetween(date, addDays(date, days))).toBe(days)
        },
      ),
    )
  })
})

describe('months and weeks', () => {
  test('a month after the 31st of January is the last of February', () => {
    expect(addMonths('2026-01-31', 1)).toBe('2026-02-28')
    expect(addMonths('2028-01-31', 1)).toBe('2028-02-29')
    expect(addMonths('2026-11-15', 24)).toBe('2028-11-15')
    expect(addMonths('2026-01-15', -1)).toBe('2025-12-15')
  })

  test('the day so many months later lies in that month, on the same day or the last there is', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -400_000, max: 2_000_000 }),
        fc.integer({ min: -3000, max: 3000 }),
        (start, months) => {
          const date = dateOf(start * MS_PER_DAY)
          const [year = 0, month = 0, day = 0] = date.split('-').map(Number)
          const count = 12 * year + month - 1 + months
          const [laterYear, laterMonth] = [Math.floor(count / 12), (((count % 12) + 12) % 12) + 1]
          fc.pre(laterYear >= 1 && laterYear <= 9999)
          expect(addMonths(date, months)).toBe(
            text(laterYear, laterMonth, Math.min(day, lastDay(laterYear, laterMonth))),
          )
        },
      ),
    )
  })

  test('every month from one date to another, the first and the last too', () => {
    expect(monthsBetween('2025-11-30', '2026-02-01')).toEqual(['2025-11', '2025-12', '2026-01', '2026-02'])
    expect(monthsBetween('2026-02-01', '2026-02-28')).toEqual(['2026-02'])
    expect(monthsBetween('2026-02-01', '2026-01-31')).toEqual([])
    expect(monthsBetween('9999-11-01', '9999-12-31')).toEqual(['9999-11', '9999-12'])
  })

  test.each(reference.weeks)('week $week of $year begins on $monday', ({ year, week, monday }) => {
    expect(mondayOfWeek(year, week)).toBe(monday)
  })
})

test('what lies beyond the years 1 to 9999 is told as their first or last day', () => {
  expect(addDays('9999-12-31', 1)).toBe('9999-12-31')
  expect(addDays('9999-12-31', Infinity)).toBe('9999-12-31')
  expect(addMonths('9999-06-30', 120)).toBe('9999-12-31')
  expect(addDays('0001-01-01', -1)).toBe('0001-01-01')
  expect(addMonths('0001-01-31', -1)).toBe('0001-01-01')
  expect(addMonths('0001-01-31', -120_000)).toBe('0001-01-01')
  expect(addMonths('2026-03-02', 1e300)).toBe('9999-12-31')
  expect(addMonths('2026-03-02', -Infinity)).toBe('0001-01-01')
  expect(dateOf(8.64e15)).toBe('9999-12-31')
})

// ISO 8601 writes the date; the zone's own name says which side of the change of clocks an instant lies on (IANA tz database).
test('a moment is told by the clock of the works', () => {
  expect(momentInWords(Date.parse('2026-01-31T23:30:00Z'), 'Europe/Ljubljana')).toBe('2026-02-01 00:30 CET')
  expect(momentInWords(Date.parse('2026-07-01T12:00:00Z'), 'Europe/Ljubljana')).toBe('2026-07-01 14:00 CEST')
  expect(momentInWords(Date.parse('2026-03-04T10:11:12Z'), 'UTC')).toBe('2026-03-04 10:11 UTC')
})
