import type { ItemDefinition } from '@/shared/plan/item'
import {
  boardQuality,
  defectFreeBoards,
  failureRateEdition,
  survivalTarget,
  surfaceMountJoints,
} from '@/shared/plan/parameters/joint-budget'
import { jointBudget } from '@/shared/rules/specification/joint-budget'

export const jointBudgetItem: ItemDefinition = {
  key: 'joint-budget',
  stage: 'specification',
  title: 'Joint reliability budget',
  asks: 'How rarely may a joint fail in service, and how rarely may one leave soldering defective, for the board to serve its life?',
  owner: 'quality',
  approvers: ['design', 'production', 'quality'],
  parameters: [survivalTarget, defectFreeBoards, surfaceMountJoints, boardQuality, failureRateEdition],
  limits: [],
  rules: [jointBudget],
  evidence: [],
  cautions: [
    'A predicted failure rate compares designs; where safety depends on a joint, a competent person judges it by the standard that applies.',
  ],
}
