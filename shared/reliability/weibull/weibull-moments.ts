import { requirePositive } from '@/shared/statistics/argument-checks'
import { lnGamma } from '@/shared/statistics/distributions/ln-gamma'

/** Shape (slope) and scale (life by which 63.2 % have failed, in the unit of the lives). */
export interface Weibull {
  readonly shape: number
  readonly scale: number
}

/** Mean life: scale · Γ(1 + 1/shape). */
export function weibullMean({ shape, scale }: Weibull): number {
  requirePositive(shape, 'Weibull shape')
  requirePositive(scale, 'Weibull scale')
  return scale * Math.exp(lnGamma(1 + 1 / shape))
}

/** Standard deviation of life: scale · √(Γ(1 + 2/shape) − Γ(1 + 1/shape)²). */
export function weibullStandardDeviation({ shape, scale }: Weibull): number {
  const meanSquare = Math.exp(lnGamma(1 + 2 / shape)) * scale ** 2
  return Math.sqrt(Math.max(0, meanSquare - weibullMean({ shape, scale }) ** 2))
}
