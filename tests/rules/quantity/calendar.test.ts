import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  addDays,
  addMonths,
  dateOf,
  daysBetween,
  instantOf,
  isDate,
  isWithin,
} from '@/shared/quantity/calendar'

// The Gregorian calendar is the outside authority: leap years by the 4/100/400 rule.
describe('dates of the calendar', () => {
  test.each([
    ['2028-02-29', true],
    ['2027-02-29', false],
    ['2100-02-29', false],
    ['2000-02-29', true],
    ['2026-04-31', false],
    ['2026-13-01', false],
    ['2026-1-01', false],
    ['', false],
  ])('%s is a date: %s', (text, is) => expect(isDate(text)).toBe(is))

  test('1970-01-01 is the epoch, and 2000-03-01 lies 11,017 days after it', () => {
    expect(instantOf('1970-01-01')).toBe(0)
    expect(daysBetween('1970-01-01', '2000-03-01')).toBe(11_017)
  })

  test('a year spans 365 days, a leap year 366', () => {
    expect(daysBetween('2026-01-01', '2027-01-01')).toBe(365)
    expect(daysBetween('2028-01-01', '2029-01-01')).toBe(366)
  })

  test('a month after the 31st of January is the last of February', () => {
    expect(addMonths('2026-01-31', 1)).toBe('2026-02-28')
    expect(addMonths('2028-01-31', 1)).toBe('2028-02-29')
    expect(addMonths('2026-11-15', 24)).toBe('2028-11-15')
    expect(addMonths('2026-01-15', -1)).toBe('2025-12-15')
  })

  test('what is no date is refused with a sentence', () => {
    expect(() => instantOf('31.03.2026')).toThrow(/2026-03-31/)
    expect(() => dateOf(Number.NaN)).toThrow(RangeError)
  })

  test('both ends belong to a period', () => {
    expect(isWithin('2026-03-31', '2026-03-31', '2026-04-01')).toBe(true)
    expect(isWithin('2026-04-02', '2026-03-31', '2026-04-01')).toBe(false)
  })

  test('adding days and counting them undo each other', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -20_000, max: 40_000 }),
        fc.integer({ min: -9999, max: 9999 }),
        (start, days) => {
          const date = dateOf(start * 86_400_000)
          expect(daysBetween(date, addDays(date, days))).toBe(days)
        },
      ),
    )
  })
})
