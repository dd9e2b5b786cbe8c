import { partsMoisture } from '@/shared/rules/control/parts-moisture'
import type { ItemDefinition } from './item'

export const partsHandlingItem: ItemDefinition = {
  key: 'parts-handling',
  stage: 'control',
  title: 'Parts handled as they are described',
  asks: 'Is every part that drinks moisture handled by the level that its description gives?',
  version: 1,
  owner: 'production',
  approvers: ['production', 'quality'],
  parameters: [],
  limits: [],
  rules: [partsMoisture],
  evidence: [],
  cautions: [],
}
