'use server'
import { redirect } from 'next/navigation'
import { signInAddress } from '@/app/addresses'
import { typedIn, type FormState } from '@/app/forms/form-state'
import { submit } from '@/app/forms/submit'
import { signedIn } from '@/lib/auth/session'
import { prepareLogImport } from './prepare'

/** Imports a previewed file, for a form sent without scripts. */
export async function importLog(_state: FormState, form: FormData): Promise<FormState> {
  if (!(await signedIn())) redirect(signInAddress())
  const prepared = await prepareLogImport(form)
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
