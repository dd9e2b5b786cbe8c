import type { ItemDefinition } from './item'
import { lacquerStorageMost, tinCoatingLeast, tinCoatingMost } from '@/shared/plan/limits/finishes'
import { lacquerStorageGuard } from '@/shared/plan/limits/specification-guards'
import {
  boardFinish,
  boardFinishLeast,
  boardFinishMost,
  boardNickel,
} from '@/shared/plan/parameters/finishes'
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
  parameters: [boardFinish, boardFinishLeast, boardFinishMost, boardNickel],
  limits: [tinCoatingLeast, tinCoatingMost, lacquerStorageMost, lacquerStorageGuard],
  rules: [boardFinishThickness, finishShelfLife],
  evidence: [],
  cautions: [],
}
