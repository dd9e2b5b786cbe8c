const COMBINING = /\p{M}+/gu
/** Letters that Unicode takes for letters of their own, and people type without their stroke or in two. */
const SPELT: Readonly<Record<string, string>> = {
  ß: 'ss',
  ø: 'o',
  ł: 'l',
  đ: 'd',
  æ: 'ae',
  œ: 'oe',
  ı: 'i',
  ς: 'σ',
}

/**
 * A text as it is compared: without case and accents, its figures and letters in their plain form, by compatibility
 * decomposition (Unicode Standard Annex #15, form NFKD).
 */
export const folded = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(COMBINING, '')
    .toLowerCase()
    .replace(/[ßøłđæœıς]/g, (letter) => SPELT[letter] ?? letter)

/** The last letter before those of Armenian: Latin, Greek and Cyrillic come before it. */
const LAST_OF_THE_THREE = 0x052f
const CAPITAL_SHARP_S = 0x1e9e

/**
 * Every capital of the Latin, Greek and Cyrillic alphabets that is no sign with an accent, and at the same place of the
 * other text its small letter: for what compares without a locale.
 */
export const CAPITALS = [...Array(LAST_OF_THE_THREE + 1).keys(), CAPITAL_SHARP_S]
  .map((code) => String.fromCodePoint(code))
  .filter((letter) => letter.normalize('NFKD') === letter && letter.toLowerCase() !== letter)
  .join('')
export const SMALL_LETTERS = CAPITALS.toLowerCase()

const MOST_WORDS = 8

/** What is looked for, word by word, as it is compared. */
export const wordsOf = (query: string): string[] =>
  folded(query).split(/\s+/).filter(Boolean).slice(0, MOST_WORDS)
