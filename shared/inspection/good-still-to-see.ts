import { exactProportionLowerBound, type Tally } from '@/shared/statistics/intervals/exact-proportion'
import { leastCount } from '@/shared/statistics/intervals/least-count'

/** Beyond this nobody counts one by one. */
const MOST = 1e9

/**
 * How many more, all of them good, would show with the stated confidence that
 * the share of good ones is at least so much; undefined where no number would.
 * Source: the exact bound of Clopper and Pearson, Biometrika 26 (1934), solved for the sample.
 */
export function goodStillToSee(seen: Tally, leastShare: number, confidence: number): number | undefined {
  const shows = (more: number): boolean =>
    exactProportionLowerBound({ found: seen.found + more, inspected: seen.inspected + more }, confidence) >=
    leastShare * (1 - 1e-12)
  if (!(leastShare < 1) || !shows(MOST)) return undefined
  return leastCount(shows, 0, seen.inspected)
}
