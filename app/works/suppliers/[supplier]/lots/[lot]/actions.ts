'use server'
import { prepareLotTest } from '@/app/programmes/[code]/lots/[lot]/prepare-test'
import { importAction } from '@/app/imports/import-action'
import { WORKS_LOT_IMPORT } from './lot-import'

export const testWorksLot = importAction(WORKS_LOT_IMPORT, prepareLotTest, 'test-lot')
