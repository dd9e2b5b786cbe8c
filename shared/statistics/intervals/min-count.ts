/**
 * Relative slack when a computed probability is held against a limit that it can meet exactly:
 * a lot of 20 with 1 defective is missed by a sample of 18 with a chance of just 0.1.
 */
export const ROUNDING_SLACK = 1e-12

/**
 * The least whole number from `min` on that satisfies a condition which, once met, stays met.
 *
 * Errors: RangeError when no safe whole number satisfies it.
 */
export function minCount(isEnough: (count: number) => boolean, min: number, guess: number): number {
  const count = minCountUpTo(isEnough, { min, guess, max: Number.MAX_SAFE_INTEGER })
  if (count === undefined) throw new RangeError('No count that can be reached is enough.')
  return count
}

/**
 * Likewise, undefined when none up to `max` satisfies it. Doubles from a guess to bracket it, then halves.
 */
export function minCountUpTo(
  isEnough: (count: number) => boolean,
  { min, guess, max }: { readonly min: number; readonly guess: number; readonly max: number },
): number | undefined {
  if (isEnough(min)) return min
  let tooFew = min
  let enough = Math.min(max, Math.max(min + 1, Math.ceil(guess)))
  while (!isEnough(enough)) {
    if (enough >= max) return undefined
    tooFew = enough
    enough = Math.min(max, enough * 2)
  }
  while (enough - tooFew > 1) {
    const middle = Math.floor((tooFew + enough) / 2)
    if (isEnough(middle)) enough = middle
    else tooFew = middle
  }
  return enough
}
