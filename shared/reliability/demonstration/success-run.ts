import { requireCount, requireOpenFraction, requirePositive } from '@/shared/statistics/argument-checks'
import { binomialCdf } from '@/shared/statistics/distributions/binomial'
import { minCount, ROUNDING_SLACK } from '@/shared/statistics/intervals/min-count'

export interface ReliabilityClaim {
  readonly reliability: number
  readonly confidence: number
}

/**
 * Units to test without a failure to show a reliability:
 * ln(1 − C) ÷ (L^β · ln R), rounded up. Testing each for `lifetimes` service
 * lives counts for more when the Weibull shape is known to be above 0; with one
 * lifetime the shape does not matter. Source: the success-run theorem, binomial.
 */
export function successRunUnits(
  { reliability, confidence }: ReliabilityClaim,
  { lifetimes, shape }: { lifetimes: number; shape: number } = { lifetimes: 1, shape: 1 },
): number {
  requireOpenFraction(reliability, 'reliability')
  requireOpenFraction(confidence, 'confidence')
  requirePositive(lifetimes, 'number of lifetimes')
  requirePositive(shape, 'Weibull shape')
  const units = Math.log1p(-confidence) / (lifetimes ** shape * Math.log(reliability))
  return Math.max(1, Math.ceil(units * (1 - ROUNDING_SLACK)))
}

/** The same with failures allowed: the fewest units of which so many failures or fewer would be rare enough. */
export function unitsToTest({ reliability, confidence }: ReliabilityClaim, failuresAllowed: number): number {
  requireOpenFraction(reliability, 'reliability')
  requireOpenFraction(confidence, 'confidence')
  requireCount(failuresAllowed, 'number of failures allowed')
  const risk = (1 - confidence) * (1 + ROUNDING_SLACK)
  return minCount(
    (units) => binomialCdf(failuresAllowed, units, 1 - reliability) <= risk,
    failuresAllowed + 1,
    (failuresAllowed + 2) / (1 - reliability),
  )
}

/** What a run of units without a failure shows: at least this reliability, (1 − C)^(1/n). */
export function reliabilityShown(unitsWithoutFailure: number, confidence: number): number {
  requireCount(unitsWithoutFailure, 'number of units', 1)
  requireOpenFraction(confidence, 'confidence')
  return Math.exp(Math.log1p(-confidence) / unitsWithoutFailure)
}
