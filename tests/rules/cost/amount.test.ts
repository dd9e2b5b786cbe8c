import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  amountOf,
  compareAmounts,
  exactly,
  isKnown,
  knownPartOf,
  leastOf,
  lessAmount,
  storedAmount,
  sumOf,
  times,
  type Amount,
  type StoredAmount,
} from '@/shared/cost/amount'
import { amountInWords } from '@/shared/cost/amount-in-words'
import { numberOrRangeTyped } from '@/shared/quantity/range-text'

const figure = fc.integer({ min: 0, max: 10_000 })
const known = fc.tuple(figure, figure).map(([a, b]): Amount => ({ from: Math.min(a, b), to: Math.max(a, b) }))
const anyAmount = fc.oneof(known, fc.constant<Amount>('unknown'))

describe('an amount of money', () => {
  it.each([
    ['120', 120],
    ['120 to 150', '120..150'],
    ['120–150', '120..150'],
    ['150 - 120', '120..150'],
    ['1.5..2', '1.5..2'],
    ['7-9', '7..9'],
    ['5 to 5', 5],
    ['-3', -3],
    ['about 5', undefined],
    ['1 to 2 to 3', undefined],
    ['', undefined],
  ])('is typed as %s', (typed, stored) => {
    expect(numberOrRangeTyped(typed)).toBe(stored)
  })

  it('is stored and read again', () => {
    fc.assert(
      fc.property(anyAmount, (amount) => {
        expect(amountOf(storedAmount(amount))).toEqual(amount)
      }),
    )
    expect(amountOf('9..3')).toBe('unknown')
    expect(amountOf('1..x' as StoredAmount)).toBe('unknown')
    expect(amountOf(undefined)).toBe('unknown')
  })

  it('makes every sum unknown that it is not known in', () => {
    fc.assert(
      fc.property(fc.array(anyAmount), (amounts) => {
        expect(isKnown(sumOf(amounts))).toBe(amounts.every(isKnown))
      }),
    )
  })

  // Interval arithmetic: the sum of what lies in two ranges lies in the sum of the ranges, as does the difference.
  it('holds every figure that its parts allow', () => {
    const within = fc
      .tuple(figure, figure, figure)
      .map((three) => three.sort((a, b) => a - b))
      .map(([from = 0, at = 0, to = 0]) => ({ amount: { from, to }, at }))
    fc.assert(
      fc.property(within, within, fc.integer({ min: -9, max: 9 }), (one, other, factor) => {
        const holds = (amount: Amount, at: number) => isKnown(amount) && amount.from <= at && at <= amount.to
        expect(holds(sumOf([one.amount, other.amount]), one.at + other.at)).toBe(true)
        expect(holds(lessAmount(one.amount, other.amount), one.at - other.at)).toBe(true)
        expect(holds(times(one.amount, factor), one.at * factor)).toBe(true)
      }),
    )
  })

  it('names nothing the least while one figure is missing or ranges overlap', () => {
    expect(leastOf([exactly(4), exactly(3), 'unknown'] as Amount[], (one) => one)).toBeUndefined()
    expect(leastOf([exactly(4), { from: 3, to: 5 }], (one) => one)).toBeUndefined()
    expect(leastOf([exactly(4), exactly(3), { from: 3, to: 5 }], (one) => one)).toEqual(exactly(3))
    expect(leastOf([] as Amount[], (one) => one)).toBeUndefined()
    fc.assert(
      fc.property(fc.array(anyAmount, { minLength: 1 }), (amounts) => {
        const least = leastOf(amounts, (one) => one)
        if (least !== undefined) expect(amounts.every(isKnown)).toBe(true)
      }),
    )
  })

  it('compares by what is sure', () => {
    expect(compareAmounts(exactly(2), exactly(3))).toBe('below')
    expect(compareAmounts(exactly(3), exactly(3))).toBe('same')
    expect(compareAmounts({ from: 2, to: 4 }, { from: 3, to: 5 })).toBe('untold')
    expect(compareAmounts(exactly(2), 'unknown')).toBe('untold')
  })

  it('counts what is known apart, and reads in words', () => {
    expect(knownPartOf([exactly(2), 'unknown', { from: 1, to: 3 }])).toEqual({ from: 3, to: 5 })
    expect(amountInWords('unknown')).toBe('not known')
    expect(amountInWords({ from: 12, to: 15 })).toBe('12 to 15')
    expect(amountInWords(exactly(12.5))).toBe('12.5')
  })
})
