import { importRoute } from '@/app/imports/import-route'
import { prepareLotTest } from '../../prepare-test'

export const POST = importRoute('test-lot', prepareLotTest)
