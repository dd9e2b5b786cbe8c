import { importRoute } from '@/app/imports/import-route'
import { LOG_IMPORT } from '../../log-import'
import { prepareLogImport } from '../prepare'

export const POST = importRoute(LOG_IMPORT, prepareLogImport)
