/**
 * A refusal: a sentence for the person, with the fields it is about. Anything
 * else that is thrown is a bug.
 */
export class Refused extends Error {
  override readonly name = 'Refused'
  constructor(
    message: string,
    /** Messages by the field they belong to, as the form names them. */
    readonly fields: Readonly<Record<string, string>> = {},
  ) {
    super(message)
  }
}
