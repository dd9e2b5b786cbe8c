import { requireNotNegative, requireProbability } from '@/shared/statistics/argument-checks'

export interface ReworkCase {
  readonly jointsPerBoard: number
  readonly defectsPerMillionJoints: number
  /** Share of the defects that inspection and test find. */
  readonly shareFound: number
  readonly costOfRework: number
  /** Share of the escaped defects that fail in service. */
  readonly shareFailingInService: number
  readonly costOfFieldRepair: number
}

export interface ExpectedReworkCost {
  readonly here: number
  readonly inService: number
  readonly total: number
}

/**
 * Cost to expect for one board from its defective joints, in the currency given:
 * n·p·[D·rework + (1 − D)·field·P(fails)]. Source: expectation of independent defects.
 */
export function expectedReworkCost(question: ReworkCase): ExpectedReworkCost {
  const { jointsPerBoard, defectsPerMillionJoints, shareFound, shareFailingInService } = question
  requireNotNegative(jointsPerBoard, 'number of joints per board')
  requireProbability(defectsPerMillionJoints / 1e6, 'defect rate as a fraction')
  requireProbability(shareFound, 'share of the defects found')
  requireProbability(shareFailingInService, 'share of the escaped defects that fail')
  requireNotNegative(question.costOfRework, 'cost of a rework')
  requireNotNegative(question.costOfFieldRepair, 'cost of a repair in service')
  const defects = (jointsPerBoard * defectsPerMillionJoints) / 1e6
  const here = defects * shareFound * question.costOfRework
  const inService = defects * (1 - shareFound) * shareFailingInService * question.costOfFieldRepair
  return { here, inService, total: here + inService }
}
