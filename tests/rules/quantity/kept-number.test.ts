import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { isKept, keptNumber } from '@/shared/quantity/kept-number'

// IEEE 754-2019, 5.12.2, and DBL_DIG of C (ISO/IEC 9899, 5.2.4.2.2): any decimal of 15 digits survives a double.
describe('a number as it is kept', () => {
  test.each([
    [1.0975000000000001, 1.0975],
    [0.1 + 0.2, 0.3],
    [-0, 0],
    [123456789.012345678, 123456789.012346],
    [9_007_199_254_740_991, 9_007_199_254_740_991],
    [1e-12, 1e-12],
  ])('%d is kept as %d', (typed, kept) => {
    expect(Object.is(keptNumber(typed), kept)).toBe(true)
  })

  test('law: what is kept is kept again as it is, and moves by less than its fifteenth digit', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e15, max: 1e15 }), (value) => {
        const kept = keptNumber(value)
        expect(isKept(kept)).toBe(true)
        expect(Object.is(keptNumber(kept), kept)).toBe(true)
        expect(Math.abs(kept - value)).toBeLessThanOrEqual(Math.abs(value) * 5.1e-15)
      }),
    )
  })

  test('law: a decimal of up to fifteen digits is kept as it was typed', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -999_999_999_999_999, max: 999_999_999_999_999 }),
        fc.integer({ min: 0, max: 12 }),
        (digits, places) => {
          const typed = Number(`${digits}e-${places}`)
          expect(keptNumber(typed)).toBe(Object.is(typed, -0) ? 0 : typed)
        },
      ),
    )
  })
})
