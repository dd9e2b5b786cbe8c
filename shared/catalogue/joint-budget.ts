import type { ItemDefinition } from './item'
import { fatigueShareFailedMax } from '@/shared/plan/limits/thermal-fatigue'
import {
  boardQuality,
  defectFreeBoards,
  failureRateEdition,
  survivalTarget,
  surfaceMountJoints,
} from '@/shared/plan/parameters/joint-budget'
import {
  jointBudgetGuard,
  leadlessFatigueGuard,
  testCyclesGuard,
} from '@/shared/plan/limits/specification-guards'
import {
  cycleTest,
  leadlessParts,
  leadlessPresent,
  steadyService,
  useCycles,
} from '@/shared/plan/parameters/thermal-fatigue'
import { jointBudget } from '@/shared/rules/specification/joint-budget'
import { leadlessFatigue } from '@/shared/rules/specification/leadless-fatigue'
import { thermalFatigue } from '@/shared/rules/specification/thermal-fatigue'

export const jointBudgetItem: ItemDefinition = {
  key: 'joint-budget',
  stage: 'specification',
  title: 'Joint reliability budget and fatigue',
  asks: 'How rarely may a joint fail in service or leave soldering defective, for the board to serve its life, and which swings of temperature must it outlive?',
  version: 1,
  owner: 'quality',
  approvers: ['design', 'production', 'quality'],
  parameters: [
    survivalTarget,
    defectFreeBoards,
    surfaceMountJoints,
    boardQuality,
    failureRateEdition,
    useCycles,
    steadyService,
    cycleTest,
    leadlessPresent,
    leadlessParts,
  ],
  limits: [fatigueShareFailedMax, jointBudgetGuard, testCyclesGuard, leadlessFatigueGuard],
  rules: [jointBudget, thermalFatigue, leadlessFatigue],
  evidence: [],
  cautions: [
    'A predicted failure rate or fatigue life compares designs; where safety depends on a joint, its life is shown by test and judged by a competent person under the standard that applies.',
  ],
}
