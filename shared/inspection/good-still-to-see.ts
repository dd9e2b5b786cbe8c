import { exactProportionLowerBound, type Tally } from '@/shared/statistics/intervals/exact-proportion'
import { minCount } from '@/shared/statistics/intervals/min-count'

/** Beyond this nobody counts one by one. */
const MAX = 1e9

/**
 * How many more, all of them good, would show with the stated confidence that
 * the share of good ones is at least so much; undefined where no number would.
 * Source: the exact bound of Clopper and Pearson, Biometrika 26 (1934), solved for the sample.
 */
export function goodStillToSee(seen: Tally, minShare: number, confidence: number): number | undefined {
  const shows = (more: number): boolean =>
    exactProportionLowerBound({ found: seen.found + more, inspected: seen.inspected + more }, confidence) >=
    minShare * (1 - 1e-12)
  if (!(minShare < 1) || !shows(MAX)) return undefined
  return minCount(shows, 0, seen.inspected)
}
