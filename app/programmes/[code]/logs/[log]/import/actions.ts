'use server'
import { typedIn, type FormState } from '@/app/forms/form-state'
import { submit, text } from '@/app/forms/submit'
import { importerInto } from '@/app/imports/importer'
import { prepareLogImport } from './prepare'

/** Imports a previewed file, for a form sent without scripts. */
export async function importLog(_state: FormState, form: FormData): Promise<FormState> {
  const importer = await importerInto(text(form, 'programme'), 'add-readings')
  if ('says' in importer) return { message: importer.says, fields: {}, typed: typedIn(form) }
  const prepared = await prepareLogImport(importer, form)
  if ('says' in prepared)
    return { message: prepared.says, fields: prepared.fields ?? {}, typed: typedIn(form) }
  const { command, input, address } = prepared
  return submit(
    command,
    form,
    () => input,
    () => address,
  )
}
