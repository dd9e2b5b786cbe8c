import { importRoute } from '@/app/imports/import-route'
import { prepareLogImport } from '../prepare'

export const POST = importRoute('add-readings', prepareLogImport)
