import type { ItemDefinition } from './item'
import {
  alloyFamily,
  annualVolume,
  environment,
  productClass,
  serviceYears,
} from '@/shared/plan/parameters/programme'

/** What every programme settles first; its values are given when the programme is opened. */
export const frameItems: readonly ItemDefinition[] = [
  {
    key: 'programme-frame',
    stage: 'specification',
    title: 'What the board is for',
    asks: 'How long must it serve, where, how many are made, and in which alloy family?',
    version: 1,
    owner: 'design',
    approvers: ['design', 'production', 'quality'],
    parameters: [productClass, alloyFamily, serviceYears, environment, annualVolume],
    limits: [],
    rules: [],
    evidence: [],
    cautions: [],
  },
]
