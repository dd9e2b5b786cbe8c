import type { ItemDefinition } from '@/shared/plan/item'
import {
  goldFlashMost,
  lacquerStorageMost,
  nickelUnderFlashLeast,
  tinCoatingLeast,
  tinCoatingMost,
} from '@/shared/plan/limits/finishes'
import {
  boardFinish,
  boardFinishLeast,
  boardFinishMost,
  boardNickel,
} from '@/shared/plan/parameters/finishes'
import { boardStorageMonths } from '@/shared/plan/parameters/storage'
import { boardFinishThickness } from '@/shared/rules/specification/board-finish-thickness'
import { finishShelfLife } from '@/shared/rules/specification/finish-shelf-life'

export const boardFinishItem: ItemDefinition = {
  key: 'board-finish',
  stage: 'specification',
  title: 'Board finish and its storage',
  asks: 'What covers the copper, how thick, and how long does it stay solderable in store?',
  owner: 'design',
  approvers: ['design', 'production', 'quality'],
  parameters: [boardFinish, boardFinishLeast, boardFinishMost, boardNickel, boardStorageMonths],
  limits: [tinCoatingLeast, tinCoatingMost, goldFlashMost, nickelUnderFlashLeast, lacquerStorageMost],
  rules: [boardFinishThickness, finishShelfLife],
  evidence: [],
  cautions: [],
}
