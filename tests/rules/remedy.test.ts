import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bisect, roundedDown, roundedUp, stepAbove, stepBelow } from '@/shared/rules/remedy'

describe('bisect', () => {
  test('finds the border from the failing side and returns a value that meets', () => {
    const meets = (value: number) => value * value >= 2
    const found = bisect({ from: 0, to: 10, meets, tolerance: 1e-9 })
    expect(found).toBeGreaterThanOrEqual(Math.SQRT2)
    expect(found).toBeCloseTo(Math.SQRT2, 8)
  })
  test('works downwards', () => {
    const found = bisect({ from: 10, to: 0, meets: (value) => value <= 3, tolerance: 1e-6 })
    expect(found).toBeLessThanOrEqual(3)
    expect(found).toBeCloseTo(3, 5)
  })
  test('gives nothing when the far end does not meet either', () => {
    expect(bisect({ from: 0, to: 1, meets: () => false, tolerance: 0.1 })).toBeUndefined()
  })
  test('leaves an input that meets already', () => {
    expect(bisect({ from: 4, to: 9, meets: () => true, tolerance: 0.1 })).toBe(4)
  })
  test('stops after the most steps it may take, still on the meeting side', () => {
    let asked = 0
    const meets = (value: number) => (asked++, value >= 0.3)
    const found = bisect({ from: 0, to: 1, meets, tolerance: 1e-12, maxSteps: 5 })
    expect(asked).toBe(2 + 5)
    expect(found).toBeGreaterThanOrEqual(0.3)
  })
  test.each([0, -1, Number.NaN])('a tolerance of %s is refused', (tolerance) => {
    expect(() => bisect({ from: 0, to: 1, meets: () => true, tolerance })).toThrow(RangeError)
  })
  test('always meets and lies within the tolerance of the border', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 999, noNaN: true }),
        fc.double({ min: 1e-6, max: 1, noNaN: true }),
        (border, tolerance) => {
          const found = bisect({ from: 0, to: 1000, meets: (value) => value >= border, tolerance })!
          expect(found).toBeGreaterThanOrEqual(border)
          expect(found - border).toBeLessThanOrEqual(tolerance)
        },
      ),
    )
  })
})

describe('rounding to a step a person would write', () => {
  test.each([
    [1.301, 0.05, 1.35],
    [1.3, 0.05, 1.3],
    [0.3, 0.1, 0.3],
    [7.0000001, 1, 8],
  ])('%s up in steps of %s is %s', (value, step, rounded) => {
    expect(roundedUp(value, step)).toBe(rounded)
  })
  test.each([
    [1.349, 0.05, 1.3],
    [1.35, 0.05, 1.35],
    [-0.2, 1, -1],
  ])('%s down in steps of %s is %s', (value, step, rounded) => {
    expect(roundedDown(value, step)).toBe(rounded)
  })
  test('the next step above or below a value on a step is another step', () => {
    expect(stepAbove(1.3, 0.05)).toBe(1.35)
    expect(stepAbove(1.31, 0.05)).toBe(1.35)
    expect(stepBelow(1.3, 0.05)).toBe(1.25)
  })
})
