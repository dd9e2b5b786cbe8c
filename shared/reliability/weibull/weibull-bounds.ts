import { requireOpenFraction } from '@/shared/statistics/argument-checks'
import { normalQuantile } from '@/shared/statistics/distributions/normal'
import type { Interval } from '@/shared/statistics/intervals/interval'
import type { LifeData } from './life-data'
import type { Weibull } from './weibull-moments'

/** Two-sided bounds of a Weibull fit by likelihood. */
export interface WeibullBounds {
  readonly shape: Interval
  /** Of the life by which a share fails, in the unit of the lives. */
  readonly lifeAt: (share: number) => Interval
}

/**
 * Bounds of the shape and of the life by which a share fails, from Fisher's
 * information as observed, logarithms taken as normal; units taken out unfailed
 * count. With a handful of failures they are rough, and rather too narrow.
 * Source: W. Q. Meeker, L. A. Escobar, Statistical Methods for Reliability Data
 * (1998), chapter 8 (from memory; the information is worked out from the likelihood).
 */
export function weibullBounds(
  { failures, suspensions = [] }: LifeData,
  { shape, scale }: Weibull,
  confidence: number,
): WeibullBounds {
  requireOpenFraction(confidence, 'confidence')
  const reach = normalQuantile((1 + confidence) / 2)
  const count = failures.length
  let [first, second] = [0, 0]
  for (const life of [...failures, ...suspensions]) {
    const depth = shape * Math.log(life / scale)
    first += depth * Math.exp(depth)
    second += depth ** 2 * Math.exp(depth)
  }
  // Information on ln(scale) and 1/shape, both times the square of 1/shape.
  const ofSpread = count + second
  const determinant = count * ofSpread - first ** 2
  return {
    shape: about(shape, reach * Math.sqrt(count / determinant)),
    lifeAt: (share) => {
      const depth = Math.log(-Math.log1p(-share))
      const variance = (ofSpread - 2 * depth * first + depth ** 2 * count) / determinant
      return about(scale * Math.exp(depth / shape), (reach * Math.sqrt(variance)) / shape)
    },
  }
}

const about = (value: number, reachOfLog: number): Interval => ({
  lower: value * Math.exp(-reachOfLog),
  upper: value * Math.exp(reachOfLog),
})
