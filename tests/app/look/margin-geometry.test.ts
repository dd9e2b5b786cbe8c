import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { marginText } from '@/app/ui/margin-text'
import { LIMIT_AT, marginGeometry } from '@/app/ui/margin-geometry'
import type { Margin } from '@/shared/rules/finding'

const atMost: Margin = { found: 0.18, limit: 0.25, unit: 'mm', direction: 'at most', guardBand: 0.02 }
const atLeast: Margin = { found: 4.2, limit: 5, unit: 'µm', direction: 'at least', guardBand: 0.5 }

describe('a margin bar', () => {
  test('puts half the limit half-way between zero and the limit', () => {
    expect(marginGeometry({ ...atMost, found: 0.125 }).found).toBeCloseTo(LIMIT_AT / 2, 12)
    expect(marginGeometry({ ...atMost, found: 0 }).found).toBeCloseTo(0, 12)
  })
  test('holds a value far outside at the edge and says so', () => {
    expect(marginGeometry({ ...atMost, found: 9 })).toMatchObject({ found: 1, clipped: true })
    expect(marginGeometry({ ...atLeast, found: 99 })).toMatchObject({ found: 0, clipped: true })
  })
  test('has a scale even where the limit is zero', () => {
    expect(marginGeometry({ ...atMost, found: 0, limit: 0 }).found).toBe(LIMIT_AT)
    expect(marginGeometry({ ...atMost, found: 1, limit: 0, guardBand: 0 }).found).toBeGreaterThan(LIMIT_AT)
  })
  test('draws a value beyond the limit beyond the line, whichever way the limit faces', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 1e4, noNaN: true }),
        fc.double({ min: 0.001, max: 3, noNaN: true }),
        fc.constantFrom<Margin['direction']>('at most', 'at least'),
        (limit, off, direction) => {
          const beyond = direction === 'at most' ? limit * (1 + off) : limit * (1 - off)
          const inside = direction === 'at most' ? limit * (1 - off) : limit * (1 + off)
          expect(marginGeometry({ ...atMost, limit, direction, found: beyond }).found).toBeGreaterThan(
            LIMIT_AT,
          )
          expect(marginGeometry({ ...atMost, limit, direction, found: inside }).found).toBeLessThan(LIMIT_AT)
        },
      ),
    )
  })
  test('refuses what cannot be drawn', () => {
    expect(() => marginGeometry({ ...atMost, found: Number.NaN })).toThrow(RangeError)
    expect(() => marginGeometry({ ...atMost, limit: Infinity })).toThrow(RangeError)
  })
})

describe('a margin in words', () => {
  test.each([
    [atMost, 'margin +0.07 mm'],
    [atLeast, 'under by 0.8 µm'],
    [{ ...atMost, found: 0.25 }, 'on the limit'],
    [{ ...atMost, found: Number.NaN }, 'not known'],
  ] as const)('%o says %s', (margin, words) => {
    expect(marginText(margin)).toBe(words)
  })
})
