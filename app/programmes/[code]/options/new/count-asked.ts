/** A study compares two to six alternatives. */
export const FEWEST = 2
export const MAX = 6

/** How many alternatives were asked for, held between the two bounds. */
export function countAsked(asked: string | undefined, otherwise = FEWEST): number {
  const count = Number(asked)
  return asked && Number.isInteger(count) ? Math.min(MAX, Math.max(FEWEST, count)) : otherwise
}
