import fc from 'fast-check'
import { expect, test } from 'vitest'
import { isInside } from '@/shared/board/geometry/distance'
import { insideTest } from '@/shared/board/geometry/inside-test'
import { circleRing } from '@/shared/board/geometry/flattened'
import { reversed, type Solid } from '@/shared/board/geometry/solid'

const place = fc.tuple(fc.integer({ min: -40, max: 40 }), fc.integer({ min: -40, max: 40 }))
const ring = fc.array(place, { minLength: 3, maxLength: 12 }).map((points) => points.flat())
const polygon = fc
  .array(ring, { minLength: 1, maxLength: 14 })
  .map((rings): Solid => ({ kind: 'polygon', rings }))

test('law: looked up by height or gone through, places lie inside the same rings', () => {
  fc.assert(
    fc.property(polygon, fc.array(place, { minLength: 1, maxLength: 20 }), (solid, places) => {
      const inside = insideTest(solid)
      for (const [x, y] of places) {
        expect(inside([x, y])).toBe(isInside(solid, x, y))
        expect(inside([x + 0.5, y + 0.25])).toBe(isInside(solid, x + 0.5, y + 0.25))
      }
    }),
  )
})

test('a plane of many clearances: inside between them, outside in each and beyond the plane', () => {
  const clearances = Array.from({ length: 400 }, (_, n) =>
    reversed(circleRing(2 + 4 * (n % 20), 2 + 4 * Math.floor(n / 20), 1)),
  )
  const plane: Solid = { kind: 'polygon', rings: [[0, 0, 80, 0, 80, 80, 0, 80], ...clearances] }
  const inside = insideTest(plane)
  for (let n = 0; n < 400; n++) {
    const [x, y] = [2 + 4 * (n % 20), 2 + 4 * Math.floor(n / 20)]
    for (const is of [inside, (at: readonly [number, number]) => isInside(plane, ...at)]) {
      expect(is([x, y])).toBe(false)
      expect(is([x + 0.9, y])).toBe(false)
      expect(is([x + 1.1, y])).toBe(true)
      expect(is([x, y - 1.1])).toBe(true)
    }
  }
  for (const at of [
    [-1, 40],
    [40, -1],
    [81, 40],
    [40, 81],
  ] as const)
    expect(inside(at)).toBe(false)
})

test('a polygon without height holds no place', () => {
  expect(insideTest({ kind: 'polygon', rings: [[0, 1, 5, 1, 9, 1]] })([3, 1])).toBe(false)
})
