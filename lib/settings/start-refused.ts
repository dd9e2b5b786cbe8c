/** A start that cannot go on, said in a sentence for the person at the terminal: what is wrong and what to do. */
export class StartRefused extends Error {
  override readonly name = 'StartRefused'
}
