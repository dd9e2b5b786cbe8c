import { rangeOfText, rangeText, type Range, type RangeText } from '@/shared/quantity/range-text'

/**
 * An amount of money: not known, or somewhere from one figure to another, which
 * are the same where it is known exactly. What is not known is never taken for
 * nothing: it stays unknown in every sum and before every comparison.
 */
export type Amount = 'unknown' | KnownAmount
export type KnownAmount = Range

/** An amount as it is stored: a number, both ends of a range, or nothing where it is not known. */
export type StoredAmount = number | RangeText | null | undefined

/** Known to the figure. */
export const exactly = (figure: number): KnownAmount => ({ from: figure, to: figure })

/** Nothing at all, which is known. */
export const NO_AMOUNT: KnownAmount = exactly(0)

export const isKnown = (amount: Amount): amount is KnownAmount => amount !== 'unknown'
export const isExact = (amount: Amount): amount is KnownAmount => isKnown(amount) && amount.from === amount.to

/** What a stored amount is; a text that is no range is not known. */
export function amountOf(stored: StoredAmount): Amount {
  if (typeof stored === 'number') return Number.isFinite(stored) ? exactly(stored) : 'unknown'
  return stored ? (rangeOfText(stored) ?? 'unknown') : 'unknown'
}

/** The amount as it is stored. */
export function storedAmount(amount: Amount): number | RangeText | null {
  if (!isKnown(amount)) return null
  return isExact(amount) ? amount.from : rangeText(amount)
}

/** Amounts together: the ends added up; unknown where one of them is. Nothing together is nothing. */
export const sumOf = (amounts: readonly Amount[]): Amount =>
  amounts.reduce<Amount>(
    (sum, next) =>
      isKnown(sum) && isKnown(next) ? { from: sum.from + next.from, to: sum.to + next.to } : 'unknown',
    NO_AMOUNT,
  )

/** The amounts that are known, together: at least so much, where none is below zero. */
export const knownPartOf = (amounts: readonly Amount[]): KnownAmount =>
  sumOf(amounts.filter(isKnown)) as KnownAmount

/** So many times an amount. Nothing of what is not known is nothing. */
export function times(amount: Amount, factor: number): Amount {
  if (factor === 0) return NO_AMOUNT
  if (!isKnown(amount)) return 'unknown'
  const ends = [amount.from * factor, amount.to * factor]
  return { from: Math.min(...ends), to: Math.max(...ends) }
}

/** The share of each of so many in an amount. RangeError unless there is at least something to share among. */
export function shareOfEach(amount: Amount, count: number): Amount {
  if (!(count > 0)) throw new RangeError('An amount is shared among more than nothing.')
  return isKnown(amount) ? { from: amount.from / count, to: amount.to / count } : 'unknown'
}

/** Nothing, and known to be. */
export const isNothing = (amount: Amount): boolean => isExact(amount) && amount.from === 0

/** One amount less another: from the least it can be to the most. */
export const lessAmount = (amount: Amount, other: Amount): Amount => sumOf([amount, times(other, -1)])

/**
 * How an amount stands to another: surely below or above it, surely the same,
 * or not to be told, because one is not known or their ranges overlap.
 */
export type Comparison = 'below' | 'above' | 'same' | 'untold'
export function compareAmounts(amount: Amount, other: Amount): Comparison {
  if (!isKnown(amount) || !isKnown(other)) return 'untold'
  if (isExact(amount) && isExact(other) && amount.from === other.from) return 'same'
  if (amount.to <= other.from) return 'below'
  return amount.from >= other.to ? 'above' : 'untold'
}

/** What may cost least: whatever no other surely undercuts. All of them while an amount is not known. */
export const mayBeLeast = <Row>(rows: readonly Row[], amountIn: (row: Row) => Amount): Row[] =>
  rows.filter((row) => !rows.some((other) => compareAmounts(amountIn(other), amountIn(row)) === 'below'))

/**
 * What surely costs least: no more than every other wherever the figures lie
 * within their ranges. Undefined where one amount is not known, where ranges
 * overlap, and where there is nothing. Among equals, the first.
 */
export function leastOf<Row>(rows: readonly Row[], amountIn: (row: Row) => Amount): Row | undefined {
  return rows.find(
    (row) =>
      isKnown(amountIn(row)) &&
      rows.every(
        (other) =>
          row === other || ['below', 'same'].includes(compareAmounts(amountIn(row), amountIn(other))),
      ),
  )
}
