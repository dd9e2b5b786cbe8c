/** Digits with a point or without, and a power of ten where one is given; no other base and no word for infinity. */
export const DECIMAL = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/

/**
 * A decimal number as a person types it: with "-" or "−" in front, its digits parted by blanks or not.
 * Undefined for anything else, such as 0x10, which the language itself would take for 16, and for a number
 * too large to be kept.
 */
export function decimalTyped(typed: string): number | undefined {
  const plain = typed.replace('−', '-').replace(/[\s\u202f]/g, '')
  const value = DECIMAL.test(plain) ? Number(plain) : NaN
  return Number.isFinite(value) ? value : undefined
}
