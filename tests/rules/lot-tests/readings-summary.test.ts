import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { isOutside, readingsSummary } from '@/shared/lot-tests/readings-summary'

describe('readings in a few numbers', () => {
  test('wetting times against 2 s at most: the slowest is the worst', () => {
    expect(readingsSummary([1, 1.5, 2.3, 1.2], { atMost: 2 })).toEqual({
      count: 4,
      outside: 1,
      lowest: 1,
      mean: 1.5,
      highest: 2.3,
      worst: 2.3,
    })
  })
  test('coverage against 95 % at least: the least is the worst, and one that meets it exactly is not outside', () => {
    expect(readingsSummary([99, 95, 98], { atLeast: 95 })).toMatchObject({ outside: 0, worst: 95 })
  })
  test('between two limits the worst has the least room to either, or is furthest beyond', () => {
    expect(readingsSummary([9, 14.5, 12], { atLeast: 8, atMost: 15 })).toMatchObject({ worst: 14.5 })
    expect(readingsSummary([7.5, 16, 12], { atLeast: 8, atMost: 15 })).toMatchObject({
      outside: 2,
      worst: 16,
    })
  })
  test('without a limit nothing is worst; without readings there is nothing to say', () => {
    expect(readingsSummary([3], {})).toMatchObject({ outside: 0, worst: undefined })
    expect(readingsSummary([], { atMost: 2 })).toBeUndefined()
  })
  test('what is no number is outside any limit', () => {
    expect(isOutside(Number.NaN, { atMost: 2 })).toBe(true)
    expect(isOutside(Number.NaN, {})).toBe(false)
  })
  test('some reading is outside exactly when the worst is', () => {
    const reading = fc.double({ min: -1e6, max: 1e6, noNaN: true })
    fc.assert(
      fc.property(fc.array(reading, { minLength: 1 }), reading, reading, (values, one, other) => {
        const limits = { atLeast: Math.min(one, other), atMost: Math.max(one, other) }
        const found = readingsSummary(values, limits)!
        expect(found.outside > 0).toBe(isOutside(found.worst!, limits))
      }),
    )
  })
})
