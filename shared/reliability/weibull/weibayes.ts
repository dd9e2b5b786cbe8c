import { requireOpenFraction, requirePositive } from '@/shared/statistics/argument-checks'
import { chiSquareQuantile } from '@/shared/statistics/distributions/chi-square'
import { requireLifeData } from './life-data'
import type { LifeData } from './life-data'

/**
 * Lower confidence bound of the Weibull scale when the shape is taken as known:
 * [2 Σ t^β ÷ χ²(C; 2r + 2)]^(1/β). Works without a single failure. Lives and
 * result in one unit. Source: Weibull handbook practice (from memory); with no
 * failure the divisor is −2 ln(1 − C).
 */
export function weibayesScaleBound(data: LifeData, shape: number, confidence: number): number {
  requireOpenFraction(confidence, 'confidence')
  const divisor = chiSquareQuantile(confidence, 2 * data.failures.length + 2) / 2
  return scaleFrom(data, shape, divisor)
}

/** The likeliest scale at a known shape: [Σ t^β ÷ r]^(1/β). Needs a failure. */
export function weibayesScale(data: LifeData, shape: number): number {
  if (data.failures.length === 0)
    throw new RangeError('Without a failure there is a lower bound of the life, but no likeliest value.')
  return scaleFrom(data, shape, data.failures.length)
}

function scaleFrom(data: LifeData, shape: number, divisor: number): number {
  requirePositive(shape, 'Weibull shape')
  requireLifeData(data, 0)
  const lives = [...data.failures, ...(data.suspensions ?? [])]
  if (lives.length === 0) throw new RangeError('No unit was tested.')
  const longest = lives.reduce((max, life) => Math.max(max, life), 0)
  const powers = lives.reduce((sum, life) => sum + (life / longest) ** shape, 0)
  return longest * (powers / divisor) ** (1 / shape)
}
