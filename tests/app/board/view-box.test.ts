import { expect, test } from 'vitest'
import {
  afterKey,
  around,
  moved,
  zoomed,
  type ViewBox,
} from '@/app/programmes/[code]/board/[evidence]/view-box'

const WHOLE: ViewBox = { minX: -1, minY: -51, width: 102, height: 52 }

test('zooms with the place under the pointer where it is', () => {
  const view = zoomed(WHOLE, WHOLE, 2, [20, -10])
  expect(view.width).toBe(51)
  const share = (box: ViewBox) => [(20 - box.minX) / box.width, (-10 - box.minY) / box.height]
  expect(share(view)).toEqual(share(WHOLE).map((each) => expect.closeTo(each, 9)))
})

test('is never further than the whole board, nor closer than its files can say', () => {
  expect(zoomed(WHOLE, WHOLE, 0.5, [20, -10])).toEqual(WHOLE)
  const closest = zoomed(WHOLE, WHOLE, 1e9, [20, -10])
  expect(closest.width).toBeCloseTo(102 / 64, 9)
  expect(closest.height).toBeCloseTo(52 / 64, 9)
})

test('keeps to the board', () => {
  const view = around(WHOLE, [50, -25])
  expect(moved(view, WHOLE, [-100, 0]).minX).toBe(-1)
  expect(moved(view, WHOLE, [100, 0]).minX).toBeCloseTo(101 - view.width, 9)
  expect(moved(WHOLE, WHOLE, [0.5, 0.5])).toEqual(WHOLE)
})

test('shows a place in the middle, or as near to it as the board goes', () => {
  const view = around(WHOLE, [50, -25])
  expect([view.minX + view.width / 2, view.minY + view.height / 2]).toEqual([50, -25])
  expect(around(WHOLE, [0, 0]).minX).toBe(-1)
})

test('answers its keys, and leaves all others alone', () => {
  const near = afterKey('+', WHOLE, WHOLE)!
  expect(near.width).toBeCloseTo(68, 9)
  expect(afterKey('0', near, WHOLE)).toEqual(WHOLE)
  expect(afterKey('-', near, WHOLE)!.width).toBeCloseTo(102, 9)
  expect(afterKey('ArrowRight', near, WHOLE)!.minX).toBeGreaterThan(near.minX)
  expect(afterKey('ArrowDown', near, WHOLE)!.minY).toBeGreaterThan(near.minY)
  expect(afterKey('Tab', near, WHOLE)).toBeUndefined()
})
