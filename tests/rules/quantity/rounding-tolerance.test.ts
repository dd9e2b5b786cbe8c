import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { roundingTolerance } from '@/shared/quantity/rounding-tolerance'
import { formatAgainst } from '@/shared/quantity/format'
import { verdictOn, type Margin } from '@/shared/rules/finding'

const at = (found: number, limit: number, direction: Margin['direction'], guardBand = 0) =>
  verdictOn({ found, limit, unit: 'mm', direction, guardBand })

// IEEE 754 double precision is the outside authority: these sums and quotients are off by its last digit.
describe('on a limit, but for binary rounding error', () => {
  test.each([
    [0.1 + 0.2, 0.3, 'at most'],
    [(1 - 0.8) / 2, 0.1, 'at least'],
    [(57 / 100) * 100, 57, 'at least'],
    [256.1 - 250.6, 5.5, 'at most'],
  ] as const)('%s against %s, %s, is inside', (found, limit, direction) => {
    expect(found).not.toBe(limit)
    expect(at(found, limit, direction)).toBe('meets')
  })
  test('room of just the guard band is not marginal', () => {
    expect(at(0.3 - 0.1, 0.3, 'at most', 0.1)).toBe('meets')
    expect(at(0.1 + 0.2, 0.4, 'at most', 0.1)).toBe('meets')
    expect(at(0.21, 0.3, 'at most', 0.1)).toBe('marginal')
  })
  test('a value on its limit reads as the limit, and one that is no number does not', () => {
    expect(formatAgainst(2.115, 2.115, 'mm')).toEqual({ found: '2.115 mm', limit: '2.115 mm' })
    expect(formatAgainst(Infinity, Infinity, '1').found).toBe('∞')
    expect(formatAgainst(Number.NaN, 1, 'mm').found).not.toContain('1')
  })
  test('what reads the same is judged the same: no "0.1 against 0.1" that fails', () => {
    expect(formatAgainst((1 - 0.8) / 2, 0.1, 'mm')).toEqual({ found: '0.1 mm', limit: '0.1 mm' })
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 9999 }),
        fc.integer({ min: 1, max: 9999 }),
        fc.constantFrom('at most' as const, 'at least' as const),
        (a, b, direction) => {
          const limit = (a + b) / 1000
          const sum = a / 1000 + b / 1000
          expect(at(sum, limit, direction)).toBe('meets')
          const printed = formatAgainst(sum, limit, 'mm')
          expect(printed.found).toBe(printed.limit)
        },
      ),
    )
  })
})

test('a millionth beyond the limit is beyond it, on either side', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (limit) => {
      expect(at(limit * (1 + 1e-6), limit, 'at most')).toBe('fails')
      expect(at(limit * (1 - 1e-6), limit, 'at least')).toBe('fails')
    }),
  )
})

test('without a finite figure there is no dust, and no pass', () => {
  expect(roundingTolerance(Infinity, 1)).toBe(0)
  expect(roundingTolerance(Number.NaN, 1)).toBe(0)
  expect(at(Infinity, 1, 'at most')).toBe('fails')
  expect(at(-Infinity, 1, 'at least')).toBe('fails')
  expect(at(Infinity, Infinity, 'at most')).not.toBe('meets')
  expect(at(Number.NaN, 1, 'at most', 1)).toBe('undetermined')
  expect(at(1e-12, 0, 'at most')).toBe('fails')
})
