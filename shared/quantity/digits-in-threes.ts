/** A space narrower than a word's, at which no line breaks. */
const NARROW = '\u202f'

/**
 * The digits before the decimal sign in threes, parted by a narrow space; four stay together.
 * Source: ISO 80000-1, 7.3.2; SI Brochure, 5.4.4.
 */
export const digitsInThrees = (digits: string): string =>
  digits.replace(/^(\D*)(\d{5,})/, (_, before: string, whole: string) => before + parted(whole))

const parted = (whole: string): string => whole.replace(/\B(?=(\d{3})+$)/g, NARROW)

/** A whole number: "62 000", "−1200". */
export const countText = (count: number): string => digitsInThrees(String(count).replace('-', '−'))
