import { decimalTyped } from './decimal-typed'
import type { DecimalSign } from './notation'

/** A range as it is stored: its two ends in the language's own decimal writing, parted by two dots. */
export type RangeText = `${number}..${number}`

/** The two ends of a range, the lower first. */
export interface Range {
  readonly from: number
  readonly to: number
}

/**
 * What a person types for one value or a range: "120", "120 to 150", "120–150",
 * "120..150" or "120 - 150". The number when there is one, or both ends are the
 * same; the range as it is stored, the lower end first; undefined for anything else.
 */
export function numberOrRangeTyped(
  typed: string,
  decimal: DecimalSign = '.',
): number | RangeText | undefined {
  const one = decimalTyped(typed, decimal)
  if (one !== undefined) return one
  const ends = typed.split(PARTING).map((end) => decimalTyped(end.trim(), decimal))
  const [first, second] = ends
  if (ends.length !== 2 || first === undefined || second === undefined) return undefined
  return first === second ? first : rangeText({ from: Math.min(first, second), to: Math.max(first, second) })
}

/** A word or a dash of its own between two figures; a dash right before the second is its sign only where another stands before. */
const PARTING = /\s*(?:\bto\b|\.\.|…|–|—|(?<=\d\.?\s*)-)\s*/i

/** A range as it is stored. */
export const rangeText = ({ from, to }: Range): RangeText => `${from}..${to}`

/** The ends of a stored range; undefined where the text is none, or its ends are not in order. */
export function rangeOfText(text: string): Range | undefined {
  const [from, to, more] = text.split('..').map(Number)
  if (from === undefined || to === undefined || more !== undefined) return undefined
  return Number.isFinite(from) && Number.isFinite(to) && from < to && text === rangeText({ from, to })
    ? { from, to }
    : undefined
}
