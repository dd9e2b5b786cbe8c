const COMBINING = /\p{M}+/gu
/** Letters that Unicode takes for letters of their own, and people type without their stroke or in two. */
const SPELT: Readonly<Record<string, string>> = { ß: 'ss', ø: 'o', ł: 'l', đ: 'd', æ: 'ae', œ: 'oe', ı: 'i' }

/**
 * A text as it is compared: without case and accents, its figures and letters in their plain form, by compatibility
 * decomposition (Unicode Standard Annex #15, form NFKD).
 */
export const folded = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(COMBINING, '')
    .toLowerCase()
    .replace(/[ßøłđæœı]/g, (letter) => SPELT[letter] ?? letter)

const MOST_WORDS = 8

/** What is looked for, word by word, as it is compared. */
export const wordsOf = (query: string): string[] =>
  folded(query).split(/\s+/).filter(Boolean).slice(0, MOST_WORDS)
