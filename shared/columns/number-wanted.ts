/** What to say of a number that was left empty, or that is none; for zod's `error`. */
export const numberWanted =
  (what: string) =>
  ({ input }: { readonly input?: unknown }): string =>
    input === undefined ? `${what} must be filled in.` : `${what} must be a number.${hint(input)}`

/** A sign that could part thousands or decimals is never guessed at. */
const hint = (input: unknown): string =>
  typeof input === 'string' && /^[+\-−]?\d[\d.,]*[.,]\d+$/.test(input.trim())
    ? ` Write ${input.trim()} with the decimal sign of the works and nothing between thousands.`
    : ''
