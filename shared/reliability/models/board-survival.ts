import { HOURS_PER_YEAR, survivalOf } from '@/shared/physics/joint-budget'
import { requireNotNegative, requirePositive } from '@/shared/statistics/argument-checks'
import type { FailureRate, ReliabilityModel } from './model'

/** So many joints of one rate each; for a rate of a whole board, one. */
export interface JointGroup {
  readonly joints: number
  readonly rate: FailureRate
}

export interface BoardSurvival {
  readonly boardFit: number
  /** Chance that no joint of the board fails in service. */
  readonly survival: number
  readonly expectedFailures: number
  /** Hours; Infinity at a rate of zero. */
  readonly meanTimeToFailureH: number
  /** Every model that went into it. */
  readonly models: readonly ReliabilityModel[]
}

/**
 * Survival of a board whose joints are in series at constant rates:
 * exp(−Σ joints · rate · hours), a year being 8760 hours. Rates in FIT, service
 * in years. Source: the series model that MIL-HDBK-217F presumes.
 */
export function boardSurvival(groups: readonly JointGroup[], serviceYears: number): BoardSurvival {
  if (groups.length === 0) throw new RangeError('A board has at least one joint.')
  requirePositive(serviceYears, 'service life')
  for (const { joints, rate } of groups) {
    requirePositive(joints, 'number of joints')
    requireNotNegative(rate.fit, 'failure rate of a joint')
  }
  const boardFit = groups.reduce((sum, { joints, rate }) => sum + joints * rate.fit, 0)
  return {
    boardFit,
    survival: survivalOf(1, serviceYears, boardFit),
    expectedFailures: boardFit * 1e-9 * serviceYears * HOURS_PER_YEAR,
    meanTimeToFailureH: 1e9 / boardFit,
    models: [...new Set(groups.map(({ rate }) => rate.model))],
  }
}
