/** Why a file of a board was not read, and at which line: nothing of it may be used. */
export class Unreadable extends Error {
  override readonly name = 'Unreadable'
  constructor(
    readonly reason: string,
    readonly line: number,
  ) {
    super(`line ${line}: ${reason}`)
  }
}

/** The line, from 1, of a place in a text. */
export function lineAt(text: string, offset: number): number {
  let line = 1
  for (let at = text.indexOf('\n'); at !== -1 && at < offset; at = text.indexOf('\n', at + 1)) line++
  return line
}
