import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { rankBounds } from '@/shared/reliability/weibull/rank-bounds'

describe('bounds of ranks', () => {
  // The least and the greatest of n have ranks in closed form: F = 1 − (1 − p)^(1/n) and p^(1/n) (computed).
  test('five failures at 5 % and 95 %: 1.02 % to 45.07 % for the first, 54.93 % to 98.98 % for the last', () => {
    const ranks = rankBounds({ failures: [10, 20, 30, 40, 50] }, 0.9)
    expect(ranks[0]?.min).toBeCloseTo(1 - 0.95 ** (1 / 5), 10)
    expect(ranks[0]?.max).toBeCloseTo(1 - 0.05 ** (1 / 5), 10)
    expect(ranks[4]?.min).toBeCloseTo(0.05 ** (1 / 5), 10)
    expect(ranks[4]?.max).toBeCloseTo(0.95 ** (1 / 5), 10)
  })

  // Johnson 1964, tables of ranks for a sample of five (from memory): 5 % 0.0764, 0.1893, 0.3426.
  test('the ranks between agree with the printed tables to four figures', () => {
    const ranks = rankBounds({ failures: [10, 20, 30, 40, 50] }, 0.9)
    expect(ranks.slice(1, 4).map(({ min }) => Number(min.toFixed(4)))).toEqual([0.0764, 0.1893, 0.3426])
  })

  test('the median rank lies between them, whatever failed and whatever did not', () => {
    const lives = fc.array(fc.integer({ min: 1, max: 5000 }), { minLength: 1, maxLength: 30 })
    const others = fc.array(fc.integer({ min: 1, max: 5000 }), { maxLength: 30 })
    fc.assert(
      fc.property(lives, others, (failures, suspensions) => {
        for (const { min, shareFailed, max } of rankBounds({ failures, suspensions }, 0.9)) {
          expect(min).toBeLessThan(shareFailed)
          expect(max).toBeGreaterThan(shareFailed)
        }
      }),
    )
  })

  test('a confidence of 0 or 1 is refused', () => {
    for (const confidence of [0, 1, Number.NaN])
      expect(() => rankBounds({ failures: [1, 2] }, confidence)).toThrow(RangeError)
  })
})
