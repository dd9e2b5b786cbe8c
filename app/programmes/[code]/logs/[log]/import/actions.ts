'use server'
import { redirect } from 'next/navigation'
import { logAddress, signInAddress } from '@/app/addresses'
import type { FormState } from '@/app/forms/form-state'
import { submit, text } from '@/app/forms/submit'
import { mappingFrom } from '@/app/imports/mapping'
import { signedIn } from '@/lib/auth/session'
import { readImport } from '@/lib/queries/import-preview'
import { logTarget, targetFields } from '@/lib/readings/import-target'

/** Imports a previewed file: read again from the store, whole or not at all. */
export async function importLog(_state: FormState, form: FormData): Promise<FormState> {
  if (!(await signedIn())) redirect(signInAddress())
  const [programme, log, file] = [text(form, 'programme'), text(form, 'log'), text(form, 'file')]
  const fields = targetFields(logTarget(log, text(form, 'characteristic')))
  const mapping = mappingFrom(
    Object.fromEntries([...form].filter((entry): entry is [string, string] => typeof entry[1] === 'string')),
    fields,
  )
  const found = await readImport(file, fields, mapping)
  if (!found?.parsed.ok)
    return {
      message: 'The file cannot be imported as it is; see what is wrong with it. Nothing was stored.',
      fields: {},
      typed: {},
    }
  const { readings, mapping: used } = found.parsed
  return submit(
    'add-readings',
    form,
    () => ({ programme, log, readings, file, mapping: { ...used } }),
    () => logAddress(programme, log),
  )
}
