import { fitLine } from '@/shared/statistics/regression/straight-line'
import type { LifeData } from './life-data'
import { medianRanks } from './median-ranks'
import type { Weibull } from './weibull-moments'

/** Which is taken as uncertain: the rank (fitted on life), or the life (fitted on rank). */
export type RankRegression = 'rank on life' | 'life on rank'

export interface WeibullRankFit extends Weibull {
  readonly regression: RankRegression
  /** Of the straight line on Weibull paper. */
  readonly rSquared: number
}

/**
 * Weibull fit by a straight line through the median ranks on Weibull paper.
 * Needs three failures. The two regressions differ; likelihood is to be
 * preferred when many units did not fail. Source: rank regression as in the
 * Weibull handbooks.
 */
export function weibullByRanks(data: LifeData, regression: RankRegression): WeibullRankFit {
  const ranked = medianRanks(data)
  const logLives = ranked.map(({ life }) => Math.log(life))
  const heights = ranked.map(({ shareFailed }) => Math.log(-Math.log1p(-shareFailed)))
  if (regression === 'rank on life') {
    const { slope, intercept, rSquared } = fitLine(logLives, heights)
    return { regression, shape: slope, scale: Math.exp(-intercept / slope), rSquared }
  }
  const { slope, intercept, rSquared } = fitLine(heights, logLives)
  return { regression, shape: 1 / slope, scale: Math.exp(intercept), rSquared }
}
