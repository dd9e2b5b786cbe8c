import { mean } from '@/shared/statistics/sample-moments'
import { requireLifeData } from './life-data'
import type { LifeData } from './life-data'
import type { Weibull } from './weibull-moments'

export interface WeibullLikelihoodFit extends Weibull {
  readonly failures: number
  readonly suspensions: number
  readonly logLikelihood: number
  /** Akaike's criterion with two parameters; smaller is better among models of the same data. */
  readonly akaike: number
}

/**
 * Weibull fit by maximum likelihood, with units taken out unfailed (censored on
 * the right). Throws RangeError without a failure, or when no unit outlived the
 * failures' geometric mean, for then the shape is unbounded.
 * Source: NIST/SEMATECH e-Handbook 8.4.1.2 (likelihood equations).
 */
export function weibullByLikelihood(data: LifeData): WeibullLikelihoodFit {
  requireLifeData(data, 1)
  const { failures, suspensions = [] } = data
  const lives = [...failures, ...suspensions]
  // Lives as shares of the longest, so that no power overflows.
  const longest = lives.reduce((max, life) => Math.max(max, life), 0)
  const logs = lives.map((life) => Math.log(life / longest))
  const meanLogFailure = mean(failures.map((life) => Math.log(life / longest)))
  if (!(meanLogFailure < -1e-12))
    throw new RangeError(
      'All failures came at one and the same time, and no unit ran longer: a Weibull shape needs some spread.',
    )
  const shape = rootOf((candidate) => 1 / candidate + meanLogFailure - weightedMeanLog(logs, candidate))
  const powers = logs.reduce((sum, log) => sum + Math.exp(shape * log), 0)
  const scale = longest * (powers / failures.length) ** (1 / shape)
  const logLikelihood =
    failures.reduce((sum, life) => sum + Math.log(shape / scale) + (shape - 1) * Math.log(life / scale), 0) -
    lives.reduce((sum, life) => sum + (life / scale) ** shape, 0)
  return {
    shape,
    scale,
    failures: failures.length,
    suspensions: suspensions.length,
    logLikelihood,
    akaike: 4 - 2 * logLikelihood,
  }
}

/** Mean of the logarithms, each life weighted by its power. */
function weightedMeanLog(logs: readonly number[], shape: number): number {
  let weights = 0
  let sum = 0
  for (const log of logs) {
    const weight = Math.exp(shape * log)
    weights += weight
    sum += weight * log
  }
  return sum / weights
}

/** The root of a function that falls from plus to minus: bracketed by doubling, then halved. */
function rootOf(falling: (shape: number) => number): number {
  let low = 1
  while (falling(low) < 0) low /= 2
  let high = low * 2
  while (falling(high) > 0) high *= 2
  while (high - low > 1e-15 * high) {
    const middle = (low + high) / 2
    if (middle === low || middle === high) break
    if (falling(middle) > 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}
