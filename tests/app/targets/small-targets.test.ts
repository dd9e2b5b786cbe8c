import { describe, expect, it } from 'vitest'
import { tooCrowded, type Target } from '@/tests/browser/small-targets'

const at = (name: string, left: number, top: number, width: number, height: number): Target => ({
  name,
  left,
  top,
  width,
  height,
})
const namesOf = (...targets: Target[]) => tooCrowded(targets).map(({ name }) => name)

/** WCAG 2.2, success criterion 2.5.8: 24 by 24 px, or a circle of 24 px around the middle that meets nothing. */
describe('targets to tap', () => {
  it('lets pass what is 24 px either way, however close', () => {
    expect(namesOf(at('a', 0, 0, 24, 24), at('b', 24, 0, 24, 24))).toEqual([])
  })
  it('lets pass a small one that stands alone', () => {
    expect(namesOf(at('small', 0, 0, 100, 16), at('far', 0, 40, 100, 24))).toEqual([])
  })
  it('finds a small one whose circle meets a large one', () => {
    // Its middle lies 8 px below its top, so that its circle reaches 4 px beyond its lower side.
    expect(namesOf(at('small', 0, 0, 100, 16), at('below', 0, 19, 100, 24))).toEqual(['small'])
    expect(namesOf(at('small', 0, 0, 100, 16), at('below', 0, 20, 100, 24))).toEqual([])
  })
  it('finds two small ones whose circles meet', () => {
    expect(namesOf(at('a', 0, 0, 16, 16), at('b', 20, 0, 16, 16))).toEqual(['a', 'b'])
    expect(namesOf(at('a', 0, 0, 16, 16), at('b', 24, 0, 16, 16))).toEqual([])
  })
})
