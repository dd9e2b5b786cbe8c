/** What to say of a number that was left empty, or that is none; for zod's `error`. */
export const numberWanted =
  (what: string) =>
  ({ input }: { readonly input?: unknown }): string =>
    input === undefined ? `${what} must be filled in.` : `${what} must be a number.`
