import { requireCount, requireCountWithin, requireOpenFraction, requirePositive } from '../argument-checks'
import { binomialCdf } from '../distributions/binomial'
import { regularisedGammaQuantile } from '../distributions/incomplete-gamma'
import type { JointsSeen } from './defects-per-million'
import { leastCount, ROUNDING_SLACK } from './least-count'

/** A defect rate that is to be shown, and how surely. */
export interface DefectBudget {
  budgetPerMillion: number
  confidence: number
}

/**
 * How many joints must be seen in all, with no defective beyond those found so far, to show with the
 * stated confidence that the defective joints per million are within the budget.
 *
 * Units: joints. Errors: RangeError unless the counts are whole, defective ≤ seen, the budget lies
 * above 0 and below a million, and the confidence strictly between 0 and 1.
 * Source: the exact binomial bound (Clopper and Pearson 1934), solved for the sample.
 */
export function jointsToInspectInAll(seen: JointsSeen, budget: DefectBudget): number {
  const { defectiveJoints, jointsSeen } = seen
  const { budgetPerMillion, confidence } = budget
  requireCount(jointsSeen, 'number of joints seen')
  requireCountWithin(defectiveJoints, 'number of defective joints', jointsSeen, 'number of joints seen')
  requirePositive(budgetPerMillion, 'budget of defective joints per million')
  if (budgetPerMillion >= 1e6) throw new RangeError('A budget of a million per million allows every joint.')
  requireOpenFraction(confidence, 'confidence')
  const tolerable = budgetPerMillion / 1e6
  const risk = (1 - confidence) * (1 + ROUNDING_SLACK)
  const shows = (joints: number) => joints > 0 && binomialCdf(defectiveJoints, joints, tolerable) <= risk
  const poisson = regularisedGammaQuantile(confidence, defectiveJoints + 1) / tolerable
  const guess = 1.001 * poisson
  // So many joints cannot be counted one by one; the binomial differs from its limit by less than a part in 10⁸.
  if (!Number.isSafeInteger(2 * Math.ceil(guess))) return Math.ceil(poisson)
  return leastCount(shows, jointsSeen, guess)
}

/**
 * How many more defect-free joints must be seen to show the budget; 0 when it is shown already.
 */
export function jointsStillToInspect(seen: JointsSeen, budget: DefectBudget): number {
  return jointsToInspectInAll(seen, budget) - seen.jointsSeen
}
