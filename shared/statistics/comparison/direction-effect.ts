import { requireCountWithin } from '@/shared/statistics/argument-checks'
import { exactBinomialPValue } from './exact-binomial-test'
import { goodnessOfFit } from './goodness-of-fit'

/** Joints of one class, such as those along and those across the direction of travel. */
export type DefectsByClass = { name: string; defects: number; joints: number }

export type DirectionEffect = {
  /** Chance of so uneven a spread if every joint runs the same risk. */
  pValue: number
  test: 'exact binomial' | 'chi-square'
  /** False when chi-square had to be used on counts too small for it. */
  reliable: boolean
  /** The class with the highest share of defects. */
  worst: string
  /** Its share over that of all other classes together; Infinity when they have none. */
  riskRatio: number
}

/**
 * Whether defects depend on the class of the joint. Two classes are tested
 * exactly (given the defects in all, each falls to a class by its share of the
 * joints); more by chi-square. Absent when no defect was found at all. It finds
 * a dependence, not its cause.
 */
export function directionEffect(classes: readonly DefectsByClass[]): DirectionEffect | undefined {
  if (classes.length < 2) throw new RangeError('A comparison needs two classes of joints at least.')
  for (const { name, defects, joints } of classes) {
    requireCountWithin(defects, `defects of “${name}”`, joints, 'joints inspected')
    if (joints === 0) throw new RangeError(`No joint of class “${name}” was seen.`)
  }
  const defects = classes.map((each) => each.defects)
  const joints = classes.map((each) => each.joints)
  const allDefects = sum(defects)
  const allJoints = sum(joints)
  if (allDefects === 0) return undefined
  const worst = classes.reduce((one, other) => (risk(other) > risk(one) ? other : one))
  const riskOfOthers = (allDefects - worst.defects) / (allJoints - worst.joints)
  const comparison = { worst: worst.name, riskRatio: risk(worst) / riskOfOthers }
  if (classes.length === 2) {
    const pValue = exactBinomialPValue(defects[0]!, allDefects, joints[0]! / allJoints)
    return { ...comparison, pValue, test: 'exact binomial', reliable: true }
  }
  const { pValue, approximationHolds } = goodnessOfFit(defects, joints)
  return { ...comparison, pValue, test: 'chi-square', reliable: approximationHolds }
}

const risk = ({ defects, joints }: DefectsByClass): number => defects / joints
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)
