import { importRoute } from '@/app/imports/import-route'
import { prepareLotTest } from '@/app/programmes/[code]/lots/[lot]/prepare-test'
import { WORKS_LOT_IMPORT } from '../../lot-import'

export const POST = importRoute(WORKS_LOT_IMPORT, prepareLotTest)
