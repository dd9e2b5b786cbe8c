import { requireCount, requirePositive, requireProbability } from '../argument-checks'
import { normalQuantile } from '../distributions/normal'

/** Defects counted over units that each offer the same number of opportunities (joints, parts). */
export interface DefectCount {
  defects: number
  units: number
  opportunitiesPerUnit: number
}

/**
 * Defects per unit. Errors: RangeError unless defects are a whole number, units and opportunities one or more.
 */
export function defectsPerUnit({ defects, units }: Pick<DefectCount, 'defects' | 'units'>): number {
  requireCount(defects, 'number of defects')
  requireCount(units, 'number of units', 1)
  return defects / units
}

/**
 * Defects per million opportunities.
 *
 * Units: per million. Source: definition in common use.
 */
export function defectsPerMillionOpportunities(count: DefectCount): number {
  requireCount(count.opportunitiesPerUnit, 'number of opportunities per unit', 1)
  return (1e6 * defectsPerUnit(count)) / count.opportunitiesPerUnit
}

/** The usual allowance for the drift of a process between short and long term; common practice, no published source. */
export const USUAL_SHIFT = 1.5

/**
 * The distance of the limit from the mean, in standard deviations, that leaves this defect rate on
 * one side; with the shift added, the level that is usually quoted.
 *
 * Units: standard deviations. Errors: RangeError unless the rate is above 0 and below a million.
 */
export function sigmaLevel(defectsPerMillion: number, shift = USUAL_SHIFT): number {
  requirePositive(defectsPerMillion, 'defect rate per million')
  requireProbability(defectsPerMillion / 1e6, 'defect rate as a fraction')
  return shift - normalQuantile(defectsPerMillion / 1e6)
}
