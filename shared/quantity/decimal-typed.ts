import type { DecimalSign } from './notation'

/** Digits with a point or without, and a power of ten where one is given; no other base and no word for infinity. */
export const DECIMAL = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/

/** Thousands parted by points, which a decimal point cannot be told from: no number of them begins with 0. */
const GROUPED = /^[+-]?[1-9]\d{0,2}(?:\.\d{3})+$/

/**
 * A decimal number as a person types it: with "-" or "−" in front, its digits parted by blanks or not.
 * With a decimal comma, points between thousands are understood before it ("1.234,5"), and a point alone is the
 * decimal sign ("0.813") unless thousands could be meant.
 * Undefined for anything else, such as 0x10, which the language itself would take for 16, for a number too large to
 * be kept, and for what could be two numbers: 1,234 where the sign is a point, 1.234 where it is a comma.
 */
export function decimalTyped(typed: string, decimal: DecimalSign = '.'): number | undefined {
  const plain = withPoint(typed.replace('−', '-').replace(/[\s\u202f]/g, ''), decimal)
  const value = plain !== undefined && DECIMAL.test(plain) ? Number(plain) : NaN
  return Number.isFinite(value) ? value : undefined
}

/** A number as it is typed where this is the decimal sign; `decimalTyped` reads it back. */
export const decimalText = (value: number, decimal: DecimalSign): string =>
  String(value).replace('.', decimal)

/** The digits with a point for the decimal sign; undefined where more than one number could be meant. */
function withPoint(text: string, decimal: DecimalSign): string | undefined {
  if (decimal === '.') return text
  const [before = '', after, more] = text.split(',')
  if (after === undefined) return GROUPED.test(text) ? undefined : text
  const whole = GROUPED.test(before) ? before.replaceAll('.', '') : before
  return more !== undefined || whole.includes('.') || after.includes('.') ? undefined : `${whole}.${after}`
}
