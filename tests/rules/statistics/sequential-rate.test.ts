import { describe, expect, test } from 'vitest'
import { poissonPmf } from '@/shared/statistics/distributions/poisson'
import { exactRateUpperBound } from '@/shared/statistics/intervals/exact-poisson-rate'
import {
  eventsExpectedToShow,
  sequentialRateLowerBound,
  sequentialRateUpperBound,
} from '@/shared/statistics/intervals/sequential-rate'

describe('a rate with bounds that hold at every look', () => {
  // The mixtures as defined by Robbins (1970) integrated numerically and solved with mpmath 1.3, apart from this code.
  test.each([
    [0, 0.95, 3.78841871996623],
    [0, 0.9, 2.98479439621386],
    [1, 0.95, 6.6572281932654],
    [2, 0.95, 8.86192538923831],
    [5, 0.9, 13.2591442032628],
  ])('%i events show a rate lower at %s once %s were expected', (events, confidence, expected) => {
    expect(eventsExpectedToShow(events, confidence)).toBeCloseTo(expected, 9)
    expect(sequentialRateUpperBound({ events, exposure: 4 }, confidence)).toBeCloseTo(expected / 4, 9)
  })
  test.each([
    [2, 0.95, 0.13268139117495],
    [3, 0.95, 0.3676310537783],
    [10, 0.95, 3.1881710212149],
    [40, 0.9, 23.106124244671],
  ])('%i events at %s: at least %s', (events, confidence, min) =>
    expect(sequentialRateLowerBound({ events, exposure: 1 }, confidence)).toBeCloseTo(min, 9),
  )
  test('one event in any exposure never shows a rate too high', () =>
    expect(sequentialRateLowerBound({ events: 1, exposure: 1e-6 }, 0.95)).toBe(0))
  test('it is wider than the bound of a single look, the price of looking often', () => {
    for (const events of [0, 1, 4, 30, 400])
      expect(eventsExpectedToShow(events, 0.95)).toBeGreaterThan(
        exactRateUpperBound({ events, exposure: 1 }, 0.95),
      )
  })

  /**
   * Chance that a process exactly at budget is ever called better, looked at
   * after each of 3000 boards with 0.02 defects expected: the count after each
   * board is followed exactly, and those called better are taken out.
   */
  function everShown(boundary: (events: number) => number): number {
    const [perBoard, boards] = [0.02, 3000]
    const steps = Array.from({ length: 6 }, (_, more) => poissonPmf(more, perBoard))
    let at: number[] = [1]
    let shown = 0
    const bounds: number[] = []
    for (let board = 1; board <= boards; board++) {
      const next = Array<number>(at.length + 5).fill(0)
      at.forEach((chance, events) => {
        if (chance > 1e-14) steps.forEach((step, more) => (next[events + more]! += chance * step))
      })
      next.forEach((chance, events) => {
        bounds[events] ??= boundary(events)
        if (perBoard * board < bounds[events]) return
        shown += chance
        next[events] = 0
      })
      while (next.length > 1 && next[next.length - 1]! < 1e-14) next.pop()
      at = next
    }
    return shown
  }
  test('looked at after every board, a process at budget is shown better with 5 % at most; a bound for one look says so far more often', () => {
    expect(everShown((events) => eventsExpectedToShow(events, 0.95))).toBeLessThan(0.05)
    expect(everShown((events) => exactRateUpperBound({ events, exposure: 1 }, 0.95))).toBeGreaterThan(0.12)
  })
  test('what is no count, exposure or confidence is refused', () => {
    expect(() => eventsExpectedToShow(1.5, 0.95)).toThrow(RangeError)
    expect(() => sequentialRateUpperBound({ events: 1, exposure: 0 }, 0.95)).toThrow(RangeError)
    expect(() => sequentialRateLowerBound({ events: 1, exposure: 1 }, 1)).toThrow(RangeError)
  })
})
