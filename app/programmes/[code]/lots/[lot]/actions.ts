'use server'
import { importAction } from '@/app/imports/import-action'
import { prepareLotTest } from './prepare-test'

export const testLot = importAction('test-lot', prepareLotTest)
