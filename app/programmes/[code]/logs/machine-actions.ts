'use server'
import { logsAddress } from '@/app/addresses'
import { typedIn, type FormState } from '@/app/forms/form-state'
import { submit, text, unfitToSend } from '@/app/forms/submit'
import { signedIn } from '@/lib/auth/session'
import { perform } from '@/lib/commands/perform'
import { newMachineToken } from '@/lib/machines/machine-token'

/** Makes a token and shows it in the answer, the only time it is ever seen. */
export async function createToken(_state: FormState, form: FormData): Promise<FormState> {
  const person = await signedIn()
  const unfit = unfitToSend(person)
  if (!person || unfit) return { message: unfit ?? '', fields: {}, typed: typedIn(form) }
  const { token, tokenHash } = newMachineToken()
  const name = text(form, 'name')
  const outcome = await perform(
    person.personId,
    'create-machine-token',
    { programme: text(form, 'programme'), name, tokenHash },
    { key: text(form, 'key') },
  )
  if (!outcome.ok) return { message: outcome.message, fields: outcome.fields, typed: typedIn(form) }
  return {
    fields: {},
    typed: {},
    done: `The token of ${name}, shown this once; copy it into the machine now: ${token}`,
  }
}

export async function revokeToken(_state: FormState, form: FormData): Promise<FormState> {
  const programme = text(form, 'programme')
  return submit(
    'revoke-machine-token',
    form,
    () => ({ programme, token: text(form, 'token') }),
    () => `${logsAddress(programme)}#machines`,
  )
}
