/** Significant digits of a decimal that every reader of decimals gives back as it was (IEEE 754, 5.12.2: DBL_DIG). */
const DIGITS = 15
const QUICK_PLACES = 1e8
const QUICK_BELOW = 1e6

/**
 * A number as it is kept: to fifteen significant digits, and minus zero as zero.
 * A double's sixteenth and seventeenth digit are its rounding error, and a
 * database driver that reads decimals quickly may give back its neighbour, which
 * could then not be told from a forged one. Finite numbers only.
 */
export function keptNumber(value: number): number {
  if (isKept(value)) return value
  return value === 0 ? 0 : Number(value.toPrecision(DIGITS))
}

/** Whether a number is kept as it is; quick for what has few decimal places. */
export function isKept(value: number): boolean {
  if (Number.isInteger(value)) return !Object.is(value, -0)
  if (Math.abs(value) < QUICK_BELOW && Math.round(value * QUICK_PLACES) / QUICK_PLACES === value) return true
  return Number(value.toPrecision(DIGITS)) === value
}
