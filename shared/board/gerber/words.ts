import { lineAt, Unreadable } from '../unreadable'

/** One block of a Gerber file: an extended command holds all blocks between its percent signs. */
export interface Word {
  readonly kind: 'command' | 'extended'
  readonly blocks: readonly string[]
  readonly offset: number
}

/**
 * A Gerber file cut into its commands (Gerber Layer Format Specification, 3.3
 * to 3.5): words end with `*`, extended commands stand between two `%`.
 *
 * Errors: Unreadable where an extended command is not closed.
 */
export function* wordsOf(text: string): Generator<Word> {
  let at = 0
  while (at < text.length) {
    const code = text.charCodeAt(at)
    if (code <= 32 || code === 42 || code === 0xfeff) at++
    else if (code === 37) {
      const end = text.indexOf('%', at + 1)
      if (end === -1) throw new Unreadable('The extended command is not closed by %.', lineAt(text, at))
      const blocks = text
        .slice(at + 1, end)
        .split('*')
        .map((block) => block.replace(/[\r\n]+/g, '').trim())
        .filter((block) => block !== '')
      yield { kind: 'extended', blocks, offset: at }
      at = end + 1
    } else {
      const end = text.indexOf('*', at)
      if (end === -1) {
        if (text.slice(at).trim() !== '')
          throw new Unreadable('The last command is not closed by *.', lineAt(text, at))
        return
      }
      const block = text
        .slice(at, end)
        .replace(/[\r\n]+/g, '')
        .trim()
      if (block !== '') yield { kind: 'command', blocks: [block], offset: at }
      at = end + 1
    }
  }
}
