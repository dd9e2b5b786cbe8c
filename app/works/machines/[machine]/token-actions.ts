'use server'
import { commandInput } from '@/app/forms/form-action'
import type { FormState } from '@/app/forms/form-state'
import { send } from '@/app/forms/submit'
import { text } from '@/app/forms/typed-text'
import { newSecretToken } from '@/lib/auth/secret-token'

/** Makes a token and shows it in the answer, the only time it is ever seen. */
export async function createToken(_state: FormState, form: FormData): Promise<FormState> {
  const { token, tokenHash } = newSecretToken()
  const outcome = await send('create-machine-token', form, () =>
    commandInput('create-machine-token', form, { tokenHash: () => tokenHash }),
  )
  if ('fields' in outcome) return outcome
  return {
    fields: {},
    typed: {},
    done: `The token of ${text(form, 'name')}, shown this once; copy it into the machine now: ${token}`,
  }
}
