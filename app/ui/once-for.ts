import type { ReactElement } from 'react'

/**
 * A mark that is the very same element for the same word: a page with hundreds
 * of it carries it once and refers to it, when it is placed by calling this
 * rather than through a component of its own.
 */
export function onceFor<Word extends string>(
  draw: (word: Word) => ReactElement,
): (word: Word) => ReactElement {
  const made = new Map<Word, ReactElement>()
  return (word) => {
    const mark = made.get(word) ?? draw(word)
    made.set(word, mark)
    return mark
  }
}
