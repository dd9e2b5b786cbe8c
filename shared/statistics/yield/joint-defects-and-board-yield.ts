import { requireCount, requireProbability } from '../argument-checks'

/**
 * Defective joints per million that would give this board yield, if joints fail independently and
 * any defective joint fails the board.
 *
 * Units: per million joints, from a yield as a fraction. Errors: RangeError unless the yield is
 * above 0 and at most 1, and the board has at least one joint.
 * Source: yield = (1 − defective fraction) ^ joints, the binomial probability of none.
 */
export function jointDefectsPerMillionFromYield(boardYield: number, jointsPerBoard: number): number {
  requireProbability(boardYield, 'board yield')
  if (boardYield === 0) throw new RangeError('A yield of 0 sets no limit to the joint defects.')
  requireCount(jointsPerBoard, 'number of joints on the board', 1)
  return 0 - 1e6 * Math.expm1(Math.log(boardYield) / jointsPerBoard)
}

/** The board yield to be expected from so many defective joints per million. */
export function boardYieldFromJointDefects(defectsPerMillion: number, jointsPerBoard: number): number {
  requireProbability(defectsPerMillion / 1e6, 'defective fraction of joints')
  requireCount(jointsPerBoard, 'number of joints on the board', 1)
  return Math.exp(jointsPerBoard * Math.log1p(-defectsPerMillion / 1e6))
}
