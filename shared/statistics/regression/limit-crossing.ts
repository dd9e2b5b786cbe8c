import { requireOpenFraction } from '@/shared/statistics/argument-checks'
import { studentTQuantile } from '@/shared/statistics/distributions/student-t'
import { requireFinite } from '@/shared/statistics/reading-checks'
import { valueAt } from './straight-line'
import type { LineFit } from './straight-line'

export type Crossing = {
  /** Where the line reaches the limit; absent when it never does after `from`. */
  byLine?: number
  /**
   * Where a further reading could first be beyond the limit, at the one-sided
   * confidence. Even a level line gets there in the end, because its direction
   * is less certain the further it is drawn; absent when it runs away from the
   * limit surely enough.
   */
  byPrediction?: number
}

/**
 * When a trend reaches a limit. `upper` limits are reached from below, `lower`
 * from above; both answers are `from` when the limit is already passed there.
 * `from` is the last x of the data unless given. Solved in closed form: the
 * prediction bound meets the limit where
 * (limit − ȳ − b·u)² = t²s²(1 + 1/n + u²/Sxx), u counted from the mean of x.
 */
export function limitCrossing(
  fit: LineFit,
  limit: { value: number; side: 'upper' | 'lower' },
  confidence: number,
  from: number = fit.lastX,
): Crossing {
  requireFinite(limit.value, 'limit')
  requireFinite(from, 'start')
  requireOpenFraction(confidence, 'confidence')
  const sign = limit.side === 'upper' ? 1 : -1
  const reach = studentTQuantile(confidence, fit.degreesOfFreedom) * fit.residualSigma
  const room = (x: number): number => sign * (limit.value - valueAt(fit, x))
  const bound = (x: number): number =>
    reach * Math.sqrt(1 + 1 / fit.points + (x - fit.meanX) ** 2 / fit.spreadX)
  return {
    byLine: room(from) <= 0 ? from : later(from, [fit.meanX + (limit.value - fit.meanY) / fit.slope]),
    byPrediction:
      room(from) <= bound(from)
        ? from
        : later(from, boundRoots(fit, sign * (limit.value - fit.meanY), sign * fit.slope, reach)),
  }
}

/** Roots of (d − b·u)² = r²(1 + 1/n + u²/Sxx) that lie on the near side of the limit, as x. */
function boundRoots(fit: LineFit, room: number, slope: number, reach: number): number[] {
  const a = slope ** 2 - reach ** 2 / fit.spreadX
  const halfB = -room * slope
  const c = room ** 2 - reach ** 2 * (1 + 1 / fit.points)
  return quadraticRoots(a, halfB, c)
    .filter((u) => (room - slope * u) * reach >= 0)
    .map((u) => fit.meanX + u)
}

/** Real roots of a·u² + 2·halfB·u + c, without loss of digits. */
function quadraticRoots(a: number, halfB: number, c: number): number[] {
  const discriminant = halfB ** 2 - a * c
  if (discriminant < 0) return []
  const q = -(halfB + (halfB < 0 ? -1 : 1) * Math.sqrt(discriminant))
  return [q / a, c / q].filter(Number.isFinite)
}

const later = (from: number, candidates: readonly number[]): number | undefined => {
  const ahead = candidates.filter((x) => Number.isFinite(x) && x >= from)
  return ahead.length > 0 ? Math.min(...ahead) : undefined
}
