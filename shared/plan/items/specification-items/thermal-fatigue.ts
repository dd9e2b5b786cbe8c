import type { ItemDefinition } from '@/shared/plan/item'
import { fatigueShareFailedMost } from '@/shared/plan/limits/thermal-fatigue'
import { cycleTest, leadlessParts, useCycles } from '@/shared/plan/parameters/thermal-fatigue'
import { leadlessFatigue } from '@/shared/rules/specification/leadless-fatigue'
import { thermalFatigue } from '@/shared/rules/specification/thermal-fatigue'

export const thermalFatigueItem: ItemDefinition = {
  key: 'thermal-fatigue',
  stage: 'specification',
  title: 'Temperature cycles',
  asks: 'Which temperature swings does service bring, and which test shows that the joints outlive them?',
  owner: 'design',
  approvers: ['design', 'quality'],
  parameters: [useCycles, cycleTest, leadlessParts],
  limits: [fatigueShareFailedMost],
  rules: [thermalFatigue, leadlessFatigue],
  evidence: [],
  cautions: [
    'Fatigue models come from surface-mount data; where safety hangs on a joint, its life is shown by test under the standard that applies.',
  ],
}
