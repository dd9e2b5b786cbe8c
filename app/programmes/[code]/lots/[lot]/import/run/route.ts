import { importRoute } from '@/app/imports/import-route'
import { LOT_IMPORT } from '../../lot-import'
import { prepareLotTest } from '../../prepare-test'

export const POST = importRoute(LOT_IMPORT, prepareLotTest)
