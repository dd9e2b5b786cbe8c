'use server'
import { importAction } from '@/app/imports/import-action'
import { LOG_IMPORT } from '../log-import'
import { prepareLogImport } from './prepare'

/** Imports a previewed file, for a form sent without scripts. */
export const importLog = importAction(LOG_IMPORT, prepareLogImport)
