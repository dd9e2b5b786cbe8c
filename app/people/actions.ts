'use server'
import { revalidatePath } from 'next/cache'
import { peopleAddress } from '@/app/addresses'
import { commandInput } from '@/app/forms/form-action'
import type { FormState } from '@/app/forms/form-state'
import { send, sentBack, submit } from '@/app/forms/submit'
import { text } from '@/app/forms/typed-text'
import { momentInWords } from '@/app/ui/date'
import { hashPassword, oneTimePassword } from '@/lib/auth/password'
import { settings } from '@/lib/settings/settings'
import { Refused } from '@/shared/refused'

/** Adds a person; one who signs in by password gets one for a single use, shown in the answer and never again. */
export async function addPerson(_state: FormState, form: FormData): Promise<FormState> {
  if (text(form, 'signsInBy') === 'provider' && settings().identityProvider)
    return submit(
      'add-person',
      form,
      () => commandInput('add-person', form, { passwordHash: () => null }),
      peopleAddress,
    )
  return withOneTimePassword('add-person', form)
}

export async function resetPassword(_state: FormState, form: FormData): Promise<FormState> {
  return withOneTimePassword('reset-password', form)
}

async function withOneTimePassword(
  command: 'add-person' | 'reset-password',
  form: FormData,
): Promise<FormState> {
  const password = oneTimePassword()
  const passwordHash = await hashPassword(password).catch(unlessRefused)
  if (passwordHash instanceof Refused) return sentBack(form, passwordHash.message)
  const outcome = await send(command, form, () =>
    commandInput(command, form, { passwordHash: () => passwordHash }),
  )
  if ('fields' in outcome) return outcome
  revalidatePath(peopleAddress(), 'layout')
  return {
    fields: {},
    typed: {},
    done: `The one-time password of ${text(form, 'name')}, shown this once and good until ${momentInWords(String(outcome.result['oneTimePasswordUntil']))}. Hand it over in person or by telephone; at the first sign-in a password of their own takes its place.`,
    shownOnce: password,
  }
}

function unlessRefused(error: unknown): Refused {
  if (error instanceof Refused) return error
  throw error
}
