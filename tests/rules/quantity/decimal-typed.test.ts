import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { numberColumn } from '@/shared/columns/column'
import { kindOf } from '@/shared/columns/column-kinds'
import { decimalTyped } from '@/shared/quantity/decimal-typed'
import { NEUTRAL_NOTATION } from '@/shared/quantity/notation'

describe('a number as a person types it', () => {
  test.each([
    ['1.35', 1.35],
    ['.5', 0.5],
    ['5.', 5],
    [' −0.5 ', -0.5],
    ['+3', 3],
    ['12\u202f500', 12_500],
    ['1e3', 1000],
    ['1.5E-3', 0.0015],
  ])('%j is %d', (typed, value) => expect(decimalTyped(typed)).toBe(value))

  // ECMA-262, "StringToNumber": the language takes each of these for a number, and an empty text for 0.
  test.each(['0x10', '0X1F', '0o17', '0b101', 'Infinity', '-Infinity', '1e999', ''])(
    '%j, which the language takes for a number, is none',
    (typed) => {
      expect(Number(typed)).not.toBeNaN()
      expect(decimalTyped(typed)).toBeUndefined()
    },
  )

  test.each(['1,5', '1_000', 'twelve', '--1', '1e', 'e3', '.', '5 mm'])('%j is none', (typed) =>
    expect(decimalTyped(typed)).toBeUndefined(),
  )

  test('every number the program prints is read as itself', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        expect(decimalTyped(String(value))).toBe(value + 0)
      }),
    )
  })
})

test('a column of a table passes 0x10 on as the text it is, for its sentence to refuse', () => {
  const column = numberColumn({ label: 'Thickness', unit: 'mm', min: 0, max: 100 })
  expect(kindOf(column).fromTyped(column, '0x10', NEUTRAL_NOTATION)).toBe('0x10')
  expect(kindOf(column).fromTyped(column, '16', NEUTRAL_NOTATION)).toBe(16)
})
