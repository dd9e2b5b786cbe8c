import { runImport } from '@/app/imports/import-route'
import { prepareLotTest } from '../../prepare-test'

export const POST = (request: Request): Promise<Response> => runImport(request, prepareLotTest)
