import { describe, expect, test } from 'vitest'
import { detailBox, dimensionOf } from '@/app/programmes/[code]/board/[evidence]/detail-view'

describe('a detail of a board', () => {
  test('shows 4 mm around its place, y downwards, or five times what is measured', () => {
    expect(detailBox({ at: [10, 20] })).toEqual({ minX: 8, minY: -22, width: 4, height: 4 })
    const wide = {
      at: [10, 20],
      ends: [
        [9, 20],
        [11, 20],
      ],
    } as const
    expect(detailBox(wide)).toEqual({ minX: 5, minY: -25, width: 10, height: 10 })
  })
  test('is dimensioned by two arrows that meet what is measured from outside', () => {
    const box = { minX: 8, minY: -22, width: 4, height: 4 }
    const { arrows, text } = dimensionOf(
      [
        [10, 20],
        [10, 20.5],
      ],
      box,
    )!
    // Upwards on the board is downwards in y: from 0.88 below the one to 0.88 above the other.
    expect(arrows).toEqual([
      { from: [10, expect.closeTo(-19.12, 9)], to: [10, -20], turnDeg: -90 },
      { from: [10, expect.closeTo(-21.38, 9)], to: [10, -20.5], turnDeg: 90 },
    ])
    expect(text).toEqual(arrows[1]!.from)
  })
  test('has no dimension where both ends are one', () => {
    const at = [10, 20] as const
    expect(dimensionOf([at, at], detailBox({ at }))).toBeUndefined()
  })
})
