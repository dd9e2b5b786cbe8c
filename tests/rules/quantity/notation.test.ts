import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { dateText, dateTyped, hasShortYear } from '@/shared/quantity/date-typed'
import { decimalText, decimalTyped } from '@/shared/quantity/decimal-typed'
import { NEUTRAL_NOTATION, notationOf } from '@/shared/quantity/notation'
import { dateInZone, dayBeginsAt, instantAtWorks, wallTimeOf } from '@/shared/quantity/works-clock'
import { textColumn } from '@/shared/columns/column'
import { kindOf } from '@/shared/columns/column-kinds'
import { addDays } from '@/shared/quantity/calendar'
import { numberOrRangeTyped } from '@/shared/quantity/range-text'

const LOCALES = ['de-DE', 'sl-SI', 'fr-FR', 'en-GB', 'en-US', 'sv-SE', 'ja-JP', 'de-CH']
const NOTATIONS = [NEUTRAL_NOTATION, ...LOCALES.map((tag) => notationOf(tag)!)]

describe('how a locale writes', () => {
  // Unicode CLDR, symbols decimal and dateFormats of each locale.
  test.each([
    ['de-DE', ',', 'day first'],
    ['en-GB', '.', 'day first'],
    ['en-US', '.', 'month first'],
    ['sv-SE', ',', 'year first'],
  ])('%s', (tag, decimal, dates) => expect(notationOf(tag)).toEqual({ decimal, dates }))
  test('what is no locale has no way of writing', () => {
    expect(notationOf('not a tag')).toBeUndefined()
    expect(notationOf('qq')).toBeUndefined()
  })
})

test('law: a number as a locale writes it is read there as that number', () => {
  fc.assert(
    fc.property(
      fc.double({ noNaN: true, noDefaultInfinity: true }),
      fc.constantFrom(...NOTATIONS),
      (value, { decimal }) => {
        expect(decimalTyped(decimalText(value, decimal), decimal)).toBe(value + 0)
      },
    ),
  )
})

test('law: a date as a locale writes it is read there as that date', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 80_000 }), fc.constantFrom(...NOTATIONS), (days, { dates }) => {
      const day = addDays('1950-01-01', days)
      expect(dateTyped(dateText(day, dates), dates)).toBe(day)
    }),
  )
})

test.each([
  ['0,813', ',', 0.813],
  ['1,234', ',', 1.234],
  ['1.234,5', ',', 1234.5],
  ['12.345.678,25', ',', 12345678.25],
  ['0.813', ',', 0.813],
  ['1.234', ',', undefined],
  ['1.23,4', ',', undefined],
  ['1,2,3', ',', undefined],
  ['1,234', '.', undefined],
  ['1 234,5', ',', 1234.5],
] as const)('%j with the decimal sign %j is %j', (typed, sign, value) =>
  expect(decimalTyped(typed, sign)).toBe(value),
)

test.each([
  ['31.12.2026', 'day first', '2026-12-31'],
  ['31/12/2026', 'day first', '2026-12-31'],
  ['31. 12. 2026', 'day first', '2026-12-31'],
  ['12/31/2026', 'month first', '2026-12-31'],
  ['03.04.2026', 'month first', undefined],
  ['31/12/2026', 'month first', undefined],
  ['31.12.2026', 'year first', undefined],
  ['2026/12/31', 'month first', '2026-12-31'],
  ['31.12.26', 'day first', undefined],
  ['29.02.2027', 'day first', undefined],
] as const)('the date %j, %s, is %j', (typed, order, day) => expect(dateTyped(typed, order)).toBe(day))

test('a year of two digits is told from other slips', () => {
  expect(hasShortYear('31.12.26')).toBe(true)
  expect(hasShortYear('31.12.2026')).toBe(false)
})

// RFC 9557 and the IANA time zone database: Pacific/Auckland is thirteen hours ahead of UTC in its summer.
test('the date at a works is that of its own calendar', () => {
  expect(dateInZone(Date.UTC(2026, 11, 31, 12, 0), 'Pacific/Auckland')).toBe('2027-01-01')
  expect(dateInZone(Date.UTC(2026, 11, 31, 12, 0), 'UTC')).toBe('2026-12-31')
})

test('law: what the clock shows at an instant is shown at that instant, or twice', () => {
  const zones = fc.constantFrom(
    'UTC',
    'Europe/Berlin',
    'America/New_York',
    'Asia/Kolkata',
    'Australia/Lord_Howe',
  )
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 4_000_000_000 }), zones, (second, zone) => {
      const found = instantAtWorks(wallTimeOf(second * 1000, zone), zone)
      expect([second * 1000, 'twice']).toContain(found)
    }),
  )
})

// Common practice, no published source: what could be two numbers is refused, never guessed at.
test('an amount or a range of amounts is read with the decimal sign it is typed with', () => {
  const column = textColumn({ label: 'Amount', figures: true })
  const read = (typed: string) =>
    kindOf(column).fromTyped(column, typed, { decimal: ',', dates: 'day first' })
  expect(read('0,42')).toBe('0.42')
  expect(read('120,5 to 150')).toBe('120.5..150')
  expect(numberOrRangeTyped(String(read('1.234')))).toBeUndefined()
})

test('a range between two figures below zero: a dash right before a figure is its sign', () => {
  expect(numberOrRangeTyped('-1 to -0.5')).toBe('-1..-0.5')
  expect(numberOrRangeTyped('-1,5..-0,5', ',')).toBe('-1.5..-0.5')
  expect(numberOrRangeTyped('120 - 150')).toBe('120..150')
  expect(numberOrRangeTyped('120-150')).toBe('120..150')
})

// IANA time zone database: Cairo's clocks go forward at midnight of 24 April 2026, which therefore begins at 01:00.
test('a day begins at its midnight, or right after where that is skipped', () => {
  expect(dayBeginsAt('2026-11-30', 'Europe/Berlin')).toBe(Date.UTC(2026, 10, 29, 23, 0))
  expect(dayBeginsAt('2026-04-24', 'Africa/Cairo')).toBe(Date.UTC(2026, 3, 23, 22, 0))
})
