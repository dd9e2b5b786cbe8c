import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { countText } from '@/shared/quantity/digits-in-threes'
import { formatAgainst, formatEstimate, formatNumber, formatQuantity } from '@/shared/quantity/format'

// ISO 80000-1, 7.3.2 and SI Brochure (9th edition), 5.4.4: digits in threes by a thin space, four stay together.
test.each([
  [1234, '1234'],
  [43279.168, '43\u202f279'],
  [-62000, '−62\u202f000'],
  [1234567, '1\u202f234\u202f567'],
  [0.30000000004, '0.3'],
  [0, '0'],
])('%s reads %s', (value, text) => expect(formatNumber(value)).toBe(text))

test('counts are grouped alike', () => {
  expect([62000, 4321, -50000].map(countText)).toEqual(['62\u202f000', '4321', '−50\u202f000'])
})

// SI Brochure, table 7: the prefixes, and what each stands for.
test.each([
  [1e8, 'Ω', '100 MΩ'],
  [50_000, 'MΩ', '50\u202f000 MΩ'],
  [250_000, 'MΩ', '250 GΩ'],
  [0.0004, 'mm', '0.4 µm'],
  [0.25, 'mm', '0.25 mm'],
  [0.00005, 'V', '50 µV'],
  [90, '°', '90°'],
  [0.0001, '%', '0.0001 %'],
] as const)('%s %s reads %s', (value, unit, text) => expect(formatQuantity(value, unit)).toBe(text))

describe('a found value beside its limit', () => {
  test.each([
    [0.17534, 0.1, 'mm', '0.175 mm', '0.1 mm'],
    [246.37, 250, '°C', '246 °C', '250 °C'],
    [245.61, 245.5, '°C', '245.6 °C', '245.5 °C'],
    [0.0123, 5, '%', '0.01 %', '5 %'],
    [0.0004, 5, '%', '0.0004 %', '5 %'],
    [1.329, 1.33, '1', '1.329', '1.33'],
    [1.33049, 1.33, '1', '1.3305', '1.33'],
    [3e7, 1e8, 'Ω', '30 MΩ', '100 MΩ'],
    [4.55e-10, 2700, 'per million', 'none expected', '2700 per million'],
    [1e12, 2e12, '1', '1×10¹²', '2×10¹²'],
  ] as const)('%s against %s %s', (found, limit, unit, foundText, limitText) =>
    expect(formatAgainst(found, limit, unit)).toEqual({ found: foundText, limit: limitText }),
  )

  test('never reads as its limit, nor as nothing, where it is neither', () => {
    const size = fc.double({ min: 1e-4, max: 1e6, noNaN: true })
    fc.assert(
      fc.property(size, size, (found, limit) => {
        const printed = formatAgainst(found, limit, '%')
        if (Math.abs(found - limit) > 1e-6 * limit) expect(printed.found).not.toBe(printed.limit)
        expect(printed.found).not.toBe('0 %')
      }),
    )
  })
})

// JCGM 100:2008, 7.2.6: 10.057 62 Ω with u = 27 mΩ is given as 10.058 Ω; two significant figures of the uncertainty.
test('an estimate has the decimals that its uncertainty has', () => {
  expect(formatEstimate({ value: 10.05762, lower: 10.05762 - 0.027, upper: 10.05762 + 0.027 }, '1')).toEqual({
    value: '10.058',
    lower: '10.031',
    upper: '10.085',
  })
  expect(formatEstimate({ value: 1234.56, lower: 812.3, upper: 1901.2 }, 'per million').value).toBe(
    '1235 per million',
  )
  expect(formatEstimate({ value: 0, lower: 0, upper: Infinity }, '1').upper).toBe('∞')
})
