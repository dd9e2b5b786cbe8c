import { partsList } from '@/shared/plan/parameters/parts-list'
import { partsAgree } from '@/shared/rules/specification/parts-agree'
import { partsDescribed } from '@/shared/rules/specification/parts-described'
import { partsHeat } from '@/shared/rules/specification/parts-heat'
import { partsListCounted } from '@/shared/rules/specification/parts-list-counted'
import type { ItemDefinition } from './item'

export const partsListItem: ItemDefinition = {
  key: 'parts-list',
  stage: 'specification',
  title: 'Parts of the board',
  asks: 'Is every part described and approved at the works, does it bear the heat of its soldering, and do the tables say of it what it is?',
  version: 1,
  owner: 'design',
  approvers: ['design', 'production', 'quality'],
  parameters: [partsList],
  limits: [],
  rules: [partsListCounted, partsDescribed, partsAgree, partsHeat],
  evidence: [],
  cautions: [],
}
