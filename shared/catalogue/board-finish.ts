import type { ItemDefinition } from './item'
import { lacquerStorageMax, tinCoatingMin, tinCoatingMax } from '@/shared/plan/limits/finishes'
import { lacquerStorageGuard } from '@/shared/plan/limits/specification-guards'
import { boardFinish, boardFinishMin, boardFinishMax, boardNickel } from '@/shared/plan/parameters/finishes'
import { boardFinishThickness } from '@/shared/rules/specification/board-finish-thickness'
import { finishShelfLife } from '@/shared/rules/specification/finish-shelf-life'

export const boardFinishItem: ItemDefinition = {
  key: 'board-finish',
  stage: 'specification',
  title: 'Board finish',
  asks: 'What covers the copper where solder shall go, and how thick?',
  version: 1,
  owner: 'design',
  approvers: ['design', 'production', 'quality'],
  parameters: [boardFinish, boardFinishMin, boardFinishMax, boardNickel],
  limits: [tinCoatingMin, tinCoatingMax, lacquerStorageMax, lacquerStorageGuard],
  rules: [boardFinishThickness, finishShelfLife],
  evidence: [],
  cautions: [],
}
