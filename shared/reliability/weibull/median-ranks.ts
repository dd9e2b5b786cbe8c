import { requireLifeData } from './life-data'
import type { LifeData } from './life-data'

/** A failure with the share of units expected to have failed by then. */
export interface RankedFailure {
  readonly life: number
  readonly shareFailed: number
}

/**
 * Plotting positions of the failures in rising order: Bernard's approximation of
 * the median rank, (i − 0.3)/(n + 0.4), with Johnson's ranks where units were
 * taken out before. A unit taken out at the moment of a failure counts as
 * having outlived it. Source: Bernard and Bos-Levenbach 1953, Johnson 1964 (from memory).
 */
export function medianRanks(data: LifeData): RankedFailure[] {
  requireLifeData(data, 1)
  const { failures, suspensions = [] } = data
  const units = [
    ...failures.map((life) => ({ life, failed: true })),
    ...suspensions.map((life) => ({ life, failed: false })),
  ].sort((one, other) => one.life - other.life || Number(other.failed) - Number(one.failed))
  let rank = 0
  const ranked: RankedFailure[] = []
  units.forEach(({ life, failed }, index) => {
    if (!failed) return
    rank += (units.length + 1 - rank) / (units.length - index + 1)
    ranked.push({ life, shareFailed: (rank - 0.3) / (units.length + 0.4) })
  })
  return ranked
}
