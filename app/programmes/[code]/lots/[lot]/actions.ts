'use server'
import { importAction } from '@/app/imports/import-action'
import { LOT_IMPORT } from './lot-import'
import { prepareLotTest } from './prepare-test'

export const testLot = importAction(LOT_IMPORT, prepareLotTest, 'test-lot')
