import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import reference from '../../reference/trail/rfc3339.json'
import { isUtcMillisecondInstant, parseRfc3339, readRfc3339, utcEpochMs } from '@/shared/trail/rfc3339'

describe('the examples of RFC 3339 section 5.8', () => {
  test.each(reference.valid)('$text', (row) => {
    const instant = parseRfc3339(row.text)
    const seconds = row.unix ?? row.unix_as_one_library_maps
    expect(Math.floor(instant.epochMs / 1000)).toBe(seconds)
    if (row.nanos !== undefined) expect(instant.nanoseconds).toBe(row.nanos)
    if (row.same_as) expect(instant.epochMs).toBe(parseRfc3339(row.same_as).epochMs)
    expect(instant.isLeapSecond).toBe(row.note === 'leap second')
  })

  test('the offset is read in minutes', () => {
    expect(parseRfc3339('1996-12-19T16:39:57-08:00').offsetMinutes).toBe(-480)
    expect(parseRfc3339('1937-01-01T12:00:27.87+00:20').offsetMinutes).toBe(20)
    // Section 4.3: -00:00 says that the local offset is not known.
    expect(parseRfc3339('1990-12-31T23:59:59-00:00').offsetMinutes).toBeUndefined()
  })
})

describe('text that is no RFC 3339 date and time', () => {
  test.each([
    ...reference.invalid,
    '2023-02-29T00:00:00Z',
    '2024-13-01T00:00:00Z',
    '2024-00-01T00:00:00Z',
    '2024-01-00T00:00:00Z',
    '2024-01-01T00:60:00Z',
    '2024-01-01T00:00:61Z',
    '2024-01-01 00:00:00Z',
    '2024-01-01T00:00:00',
    '2024-01-01T00:00:00.Z',
    '2024-01-01T00:00:00+24:00',
    '2024-01-01T00:00:00+01:60',
    '2024-01-01T00:00:00+0100',
    ' 2024-01-01T00:00:00Z',
    '2024-01-01T00:00:00Z\n',
    '+2024-01-01T00:00:00Z',
    // A leap second only ends a UTC month (section 5.7).
    '1990-12-30T23:59:60Z',
    '1990-12-31T22:59:60Z',
    '1990-12-31T23:59:60-08:00',
    '',
  ])('%j', (text) => {
    expect(readRfc3339(text)).toBeUndefined()
    expect(() => parseRfc3339(text)).toThrow(RangeError)
  })
})

test('lower-case t and z are allowed, and a leap day exists in 2000 but not in 2100', () => {
  expect(readRfc3339('1985-04-12t23:20:50.52z')?.epochMs).toBe(482196050520)
  expect(readRfc3339('2000-02-29T00:00:00Z')).toBeDefined()
  expect(readRfc3339('2100-02-28T00:00:00Z')).toBeDefined()
  expect(readRfc3339('2100-02-29T00:00:00Z')).toBeUndefined()
  expect(utcEpochMs(2024, 13, 1, 0, 0, 0)).toBeUndefined()
})

describe('the form in which the trail keeps time', () => {
  test.each([
    ['2026-03-04T10:11:12.345Z', true],
    ['2026-03-04T10:11:12Z', false],
    ['2026-03-04T10:11:12.3456Z', false],
    ['2026-03-04T10:11:12.345+00:00', false],
    ['2026-03-04t10:11:12.345Z', false],
    ['2026-02-30T10:11:12.345Z', false],
    ['2026-03-04T24:00:00.000Z', false],
    ['1990-12-31T23:59:60.000Z', false],
  ])('%s: %s', (text, is) => {
    expect(isUtcMillisecondInstant(text)).toBe(is)
  })
})

// The platform's calendar counts alike for dates that exist, which are the only ones given to it here.
const anyInstant = fc.date({
  min: new Date('0001-01-01T00:00:00Z'),
  max: new Date('9999-12-31T23:59:59.999Z'),
  noInvalidDate: true,
})

test('every moment from the year 1 to 9999 reads back as it was', () => {
  fc.assert(
    fc.property(anyInstant, (date) => {
      expect(parseRfc3339(date.toISOString()).epochMs).toBe(date.getTime())
      expect(isUtcMillisecondInstant(date.toISOString())).toBe(true)
    }),
  )
})

/** Days of each month, and the rule of leap years, as section 5.7 and appendix C give them. */
const MONTH_LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]
const isLeapYear = (year: number): boolean => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0)
const lastDay = (year: number, month: number): number =>
  month === 2 && isLeapYear(year) ? 29 : MONTH_LENGTHS[month - 1]!

test('every first and last day of a month is where the calendar of RFC 3339 has it, and none comes after', () => {
  for (const from of [0, 1600]) {
    // Both years begin cycles of 400 years; the second lies 135,140 days before 1970.
    let days = -135_140 - (1600 - from) * (146_097 / 400)
    for (let year = from; year <= from + 800; year++) {
      for (let month = 1; month <= 12; month++) {
        const last = lastDay(year, month)
        expect(utcEpochMs(year, month, 1, 0, 0, 0)).toBe(days * 86_400_000)
        days += last
        expect(utcEpochMs(year, month, last, 23, 59, 59)).toBe(days * 86_400_000 - 1000)
        expect(utcEpochMs(year, month, last + 1, 0, 0, 0)).toBeUndefined()
      }
    }
  }
})

/** An independent judge: the grammar as a pattern, the calendar by writing the platform's date out again. */
function isDateTime(text: string): boolean {
  const found = /^(\d{4}-\d\d-\d\d)[Tt](\d\d:\d\d:\d\d)(\.\d+)?([Zz]|[+-]([01]\d|2[0-3]):[0-5]\d)$/.exec(text)
  if (!found) return false
  const whole = `${found[1]}T${found[2]}.000Z`
  const date = new Date(whole)
  return !Number.isNaN(date.getTime()) && date.toISOString() === whole
}

test('law: text close to a date and time is accepted exactly when it is one', () => {
  const pieces = fc.constantFrom(...'0123456789-:TtZz.+ /', '')
  const zones = fc.constantFrom(
    'Z',
    'z',
    '+01:00',
    '-23:59',
    '-00:00',
    '+24:00',
    '.5Z',
    '.123456789012+05:30',
  )
  fc.assert(
    fc.property(anyInstant, zones, fc.nat(30), pieces, (date, zone, at, piece) => {
      const text = date.toISOString().slice(0, 19) + zone
      const changed = text.slice(0, at) + piece + text.slice(at + 1)
      // Second 60 has its own tests; the platform's date does not know it.
      fc.pre(changed.slice(17, 19) !== '60')
      expect([changed, readRfc3339(changed) !== undefined]).toEqual([changed, isDateTime(changed)])
    }),
    { numRuns: 2_000 },
  )
})
