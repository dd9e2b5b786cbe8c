import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { rankBounds } from '@/shared/reliability/weibull/rank-bounds'
import { failureTimesOnTest } from '@/shared/reliability/demonstration/time-on-test'

describe('bounds of ranks', () => {
  // The least and the greatest of n have ranks in closed form: F = 1 − (1 − p)^(1/n) and p^(1/n) (computed).
  test('five failures at 5 % and 95 %: 1.02 % to 45.07 % for the first, 54.93 % to 98.98 % for the last', () => {
    const ranks = rankBounds({ failures: [10, 20, 30, 40, 50] }, 0.9)
    expect(ranks[0]?.least).toBeCloseTo(1 - 0.95 ** (1 / 5), 10)
    expect(ranks[0]?.most).toBeCloseTo(1 - 0.05 ** (1 / 5), 10)
    expect(ranks[4]?.least).toBeCloseTo(0.05 ** (1 / 5), 10)
    expect(ranks[4]?.most).toBeCloseTo(0.95 ** (1 / 5), 10)
  })

  // Johnson 1964, tables of ranks for a sample of five (from memory): 5 % 0.0764, 0.1893, 0.3426.
  test('the ranks between agree with the printed tables to four figures', () => {
    const ranks = rankBounds({ failures: [10, 20, 30, 40, 50] }, 0.9)
    expect(ranks.slice(1, 4).map(({ least }) => Number(least.toFixed(4)))).toEqual([0.0764, 0.1893, 0.3426])
  })

  test('the median rank lies between them, whatever failed and whatever did not', () => {
    const lives = fc.array(fc.integer({ min: 1, max: 5000 }), { minLength: 1, maxLength: 30 })
    const others = fc.array(fc.integer({ min: 1, max: 5000 }), { maxLength: 30 })
    fc.assert(
      fc.property(lives, others, (failures, suspensions) => {
        for (const { least, shareFailed, most } of rankBounds({ failures, suspensions }, 0.9)) {
          expect(least).toBeLessThan(shareFailed)
          expect(most).toBeGreaterThan(shareFailed)
        }
      }),
    )
  })

  test('a confidence of 0 or 1 is refused', () => {
    for (const confidence of [0, 1, Number.NaN])
      expect(() => rankBounds({ failures: [1, 2] }, confidence)).toThrow(RangeError)
  })
})

describe('time on test', () => {
  // Worked by hand: three units; at 2 all three have run 2; at 4 two have run 4 and one 2.
  test('three units, two failing at 2 and 4, one taken out at 10: 6, 10 and 16 in all', () => {
    expect(failureTimesOnTest([{ failures: [4, 2], suspensions: [10] }])).toEqual({ times: [6, 10], end: 16 })
  })

  test('a second test begins where the first ended', () => {
    const first = { failures: [5], suspensions: [5] }
    expect(failureTimesOnTest([first, { failures: [3] }])).toEqual({ times: [10, 13], end: 13 })
  })

  test('a life of nothing is refused', () => {
    expect(() => failureTimesOnTest([{ failures: [0] }])).toThrow(RangeError)
  })
})
