import type { ItemDefinition } from './item'
import { freeTinMin } from '@/shared/plan/limits/finishes'
import { freeTinGuard } from '@/shared/plan/limits/specification-guards'
import { boardStorageMonths, leadStorageMonths, storageTemperature } from '@/shared/plan/parameters/storage'
import { storageLife } from '@/shared/rules/specification/storage-life'

export const storageItem: ItemDefinition = {
  key: 'storage',
  stage: 'specification',
  title: 'Storage before soldering',
  asks: 'How long and how warm may boards and components wait and still be solderable?',
  version: 1,
  owner: 'production',
  approvers: ['design', 'production', 'quality'],
  parameters: [boardStorageMonths, leadStorageMonths, storageTemperature],
  limits: [freeTinMin, freeTinGuard],
  rules: [storageLife],
  evidence: [],
  cautions: [],
}
