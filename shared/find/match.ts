import type { Findable } from './findable'
import { folded } from './folded'

/** How well a text answers a word, the best first. */
const THE_WHOLE = 0
const ITS_BEGINNING = 1
const A_WHOLE_WORD = 2
const A_WORDS_BEGINNING = 3
const INSIDE = 4

/**
 * How well one thing answers all words: that of the word that it answers worst, so that every word
 * has to be there. What people type for it beside its label counts one less, unless it is the whole.
 * Undefined when a word is nowhere, or when all of them only say the programme that it lies in.
 */
export function matchOf(
  words: readonly string[],
  { label, also, programme = '' }: Pick<Findable<unknown>, 'label' | 'also' | 'programme'>,
): number | undefined {
  const own = [folded(label), ...also.map(folded)]
  if (own.includes(words.join(' '))) return THE_WHOLE
  const matches = words.map((word) =>
    Math.min(...own.map((text, at) => (at === 0 ? inText(word, text) : lesser(inText(word, text))))),
  )
  const theirs = matches.filter((match) => match < Infinity)
  const isThere = (word: string, at: number): boolean =>
    matches[at] !== Infinity || folded(programme).includes(word)
  return theirs.length > 0 && words.every(isThere) ? Math.max(...theirs) : undefined
}

const lesser = (match: number): number => (match === THE_WHOLE ? match : match + 1)

/** Where a word stands in a text, the best of its places; infinite where it does not. */
function inText(word: string, text: string): number {
  let best = Infinity
  for (let at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1)) {
    best = Math.min(best, matchAt(text, at, word.length))
  }
  return best
}

function matchAt(text: string, at: number, length: number): number {
  const ends = !isOfWord(text[at + length])
  if (at === 0) return ends && length === text.length ? THE_WHOLE : ITS_BEGINNING
  if (isOfWord(text[at - 1])) return INSIDE
  return ends ? A_WHOLE_WORD : A_WORDS_BEGINNING
}

const isOfWord = (letter: string | undefined): boolean => letter !== undefined && /[\p{L}\p{N}]/u.test(letter)
