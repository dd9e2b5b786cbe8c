import { runImport } from '@/app/imports/import-route'
import { prepareLogImport } from '../prepare'

export const POST = (request: Request): Promise<Response> => runImport(request, prepareLogImport)
