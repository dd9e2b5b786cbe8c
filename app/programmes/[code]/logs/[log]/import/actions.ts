'use server'
import { importAction } from '@/app/imports/import-action'
import { prepareLogImport } from './prepare'

/** Imports a previewed file, for a form sent without scripts. */
export const importLog = importAction('add-readings', prepareLogImport)
