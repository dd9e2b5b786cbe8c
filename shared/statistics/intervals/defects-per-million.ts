import { requireCount, requireCountWithin } from '../argument-checks'
import { exactProportionInterval } from './exact-proportion'
import type { Interval } from './interval'

/** Defective joints among joints inspected. A joint counts once, however many faults it shows. */
export interface JointsSeen {
  defectiveJoints: number
  jointsSeen: number
}

const MILLION = 1e6

/**
 * Defective joints per million, as counted.
 *
 * Units: per million joints. Errors: as for the exact proportion.
 */
export function defectsPerMillionJoints({ defectiveJoints, jointsSeen }: JointsSeen): number {
  requireCount(jointsSeen, 'number of joints inspected', 1)
  requireCountWithin(defectiveJoints, 'number of defective joints', jointsSeen, 'number of joints inspected')
  return (MILLION * defectiveJoints) / jointsSeen
}

/**
 * Exact two-sided interval for the defective joints per million.
 *
 * Units: per million joints; the confidence is a fraction.
 * Source: Clopper and Pearson, Biometrika 26 (1934).
 */
export function defectsPerMillionInterval(seen: JointsSeen, confidence: number): Interval {
  const { lower, upper } = exactProportionInterval(asTally(seen), confidence)
  return { lower: MILLION * lower, upper: MILLION * upper }
}

const asTally = ({ defectiveJoints, jointsSeen }: JointsSeen) => ({
  found: defectiveJoints,
  inspected: jointsSeen,
})
