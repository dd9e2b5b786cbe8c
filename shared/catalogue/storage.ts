import type { ItemDefinition } from './item'
import { freeTinMin } from '@/shared/plan/limits/finishes'
import { freeTinGuard } from '@/shared/plan/limits/specification-guards'
import { storeChlorideMax, storeCopperFilmMax, storeSilverFilmMax } from '@/shared/plan/limits/store-air'
import {
  boardStorageMonths,
  leadStorageMonths,
  storageTemperature,
  storeChloride,
  storeCopperFilm,
  storeSilverFilm,
} from '@/shared/plan/parameters/storage'
import { storageLife } from '@/shared/rules/specification/storage-life'
import { storeAir } from '@/shared/rules/specification/store-air'

export const storageItem: ItemDefinition = {
  key: 'storage',
  stage: 'specification',
  title: 'Storage before soldering',
  asks: 'How long and how warm may boards and components wait and still be solderable?',
  version: 1,
  owner: 'production',
  approvers: ['design', 'production', 'quality'],
  parameters: [
    boardStorageMonths,
    leadStorageMonths,
    storageTemperature,
    storeSilverFilm,
    storeCopperFilm,
    storeChloride,
  ],
  limits: [freeTinMin, freeTinGuard, storeSilverFilmMax, storeCopperFilmMax, storeChlorideMax],
  rules: [storageLife, storeAir],
  evidence: [],
  cautions: [],
}
