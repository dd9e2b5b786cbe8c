import { jointDefectsPerMillionFromYield } from '@/shared/statistics/yield/joint-defects-and-board-yield'

/**
 * What a reliability target leaves to each joint of a board. Joints are in
 * series: the board holds only while every joint holds.
 */

/** Hours in a year of 365 days, the year that the series-model tables of the trade use. */
export const HOURS_PER_YEAR = 8760

interface ServiceTarget {
  /** Joints on one board. */
  readonly joints: number
  readonly serviceYears: number
  /** The probability, between 0 and 1, that no joint of a board fails in service. */
  readonly survival: number
}

/**
 * The failure rate each joint may have, in FIT (failures per 10⁹ hours), for a
 * board to survive its service with the given probability at a constant rate:
 * −ln R / (N · H) · 10⁹.
 * Throws RangeError outside joints ≥ 1, years > 0, 0 < survival < 1.
 * Source: the series model at constant failure rates that MIL-HDBK-217F presumes.
 */
export function allowedFailureRateFit({ joints, serviceYears, survival }: ServiceTarget): number {
  requireJoints(joints)
  if (!(serviceYears > 0)) throw new RangeError('The service life must be greater than zero years.')
  requireProbability(survival, 'The survival target')
  return (-Math.log(survival) / (joints * serviceYears * HOURS_PER_YEAR)) * 1e9
}

/**
 * The probability that no joint of a board fails in service: exp(−N · λ · H).
 * `failureRateFit` is for one joint.
 */
export function survivalOf(joints: number, serviceYears: number, failureRateFit: number): number {
  requireJoints(joints)
  if (!(serviceYears > 0)) throw new RangeError('The service life must be greater than zero years.')
  if (!(failureRateFit >= 0)) throw new RangeError('A failure rate must not be negative.')
  return Math.exp(-joints * failureRateFit * 1e-9 * serviceYears * HOURS_PER_YEAR)
}

/**
 * Defective joints per million that leave the given share of boards without
 * one: 10⁶ · (1 − Y^(1/n)).
 * Throws RangeError outside joints ≥ 1, 0 < share < 1.
 * Source: binomial series model of board yield.
 */
export function allowedDefectsPerMillion(target: {
  /** Joints on one board. */
  readonly joints: number
  /** The share of boards, between 0 and 1, that shall have no defective joint. */
  readonly defectFreeBoards: number
}): number {
  requireProbability(target.defectFreeBoards, 'The share of defect-free boards')
  return jointDefectsPerMillionFromYield(target.defectFreeBoards, target.joints)
}

function requireJoints(joints: number): void {
  if (!(joints >= 1)) throw new RangeError('A board has at least one joint.')
}

function requireProbability(value: number, name: string): void {
  if (!(value > 0 && value < 1)) throw new RangeError(`${name} lies between 0 and 1, both excluded.`)
}
