import { requireCount, requireCountWithin, requireNotNegative, requireProbability } from '../argument-checks'

/**
 * First-pass yield: the share of units right at the first attempt, before any rework.
 *
 * Units: a fraction. Errors: RangeError unless the counts are whole, passed ≤ entered, entered ≥ 1.
 */
export function firstPassYield(passedFirst: number, entered: number): number {
  requireCount(entered, 'number of units entered', 1)
  requireCountWithin(passedFirst, 'number passed at the first attempt', entered, 'number entered')
  return passedFirst / entered
}

/**
 * First-pass yield expected when defects fall independently over the units.
 *
 * Units: a fraction, from defects per unit. Source: the Poisson probability of no defect.
 */
export function firstPassYieldFromDefects(defectsPerUnit: number): number {
  requireNotNegative(defectsPerUnit, 'number of defects per unit')
  return Math.exp(-defectsPerUnit)
}

/**
 * Rolled yield: the share of units that pass every step at the first attempt.
 *
 * Units: fractions. Errors: RangeError for no steps or a yield outside 0 … 1.
 * Source: product of the steps' first-pass yields; assumes that the steps fail independently.
 */
export function rolledYield(firstPassYields: readonly number[]): number {
  if (firstPassYields.length === 0) throw new RangeError('A rolled yield needs at least one step.')
  return firstPassYields.reduce((product, stepYield, index) => {
    requireProbability(stepYield, `yield of step ${index + 1}`)
    return product * stepYield
  }, 1)
}
