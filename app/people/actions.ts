'use server'
import { revalidatePath } from 'next/cache'
import { peopleAddress, personAddress } from '@/app/addresses'
import { typedIn, type FormState } from '@/app/forms/form-state'
import { submit, text, unfitToSend } from '@/app/forms/submit'
import { momentInWords } from '@/app/ui/date'
import { hashPassword, oneTimePassword } from '@/lib/auth/password'
import { signedIn } from '@/lib/auth/session'
import { perform } from '@/lib/commands/perform'
import { settings } from '@/lib/settings/settings'
import type { CommandName } from '@/shared/policy'
import { Refused } from '@/shared/refused'

/** Adds a person; one who signs in by password gets one for a single use, shown in the answer and never again. */
export async function addPerson(_state: FormState, form: FormData): Promise<FormState> {
  const person = { email: text(form, 'email'), name: text(form, 'name'), rights: text(form, 'rights') }
  if (text(form, 'signsInBy') === 'provider' && settings().identityProvider) {
    return submit('add-person', form, () => ({ ...person, passwordHash: null }), peopleAddress)
  }
  return withOneTimePassword(form, 'add-person', person, person.name)
}

export async function resetPassword(_state: FormState, form: FormData): Promise<FormState> {
  const personId = text(form, 'personId')
  if ((await signedIn())?.personId === personId) {
    return { message: 'Change your own password under your name, above.', fields: {}, typed: {} }
  }
  return withOneTimePassword(form, 'reset-password', { personId }, text(form, 'name'))
}

async function withOneTimePassword(
  form: FormData,
  command: CommandName,
  input: object,
  name: string,
): Promise<FormState> {
  const actor = await signedIn()
  const unfit = unfitToSend(actor)
  if (!actor || unfit) return { message: unfit ?? '', fields: {}, typed: typedIn(form) }
  const password = oneTimePassword()
  const passwordHash = await hashPassword(password).catch(unlessRefused)
  if (passwordHash instanceof Refused)
    return { message: passwordHash.message, fields: {}, typed: typedIn(form) }
  const outcome = await perform(
    actor.personId,
    command,
    { ...input, passwordHash },
    { key: text(form, 'key') },
  )
  if (!outcome.ok) return { message: outcome.message, fields: outcome.fields, typed: typedIn(form) }
  revalidatePath(peopleAddress(), 'layout')
  return {
    fields: {},
    typed: {},
    done: `The one-time password of ${name}, shown this once and good until ${momentInWords(String(outcome.result['oneTimePasswordUntil']))}. Hand it over in person or by telephone; at the first sign-in a password of their own takes its place.`,
    shownOnce: password,
  }
}

function unlessRefused(error: unknown): Refused {
  if (error instanceof Refused) return error
  throw error
}

export async function changePerson(_state: FormState, form: FormData): Promise<FormState> {
  const toInput = () => ({
    personId: text(form, 'personId'),
    email: text(form, 'email'),
    name: text(form, 'name'),
    rights: text(form, 'rights'),
  })
  return submit('change-person', form, toInput, () => personAddress(text(form, 'personId')))
}

const aboutAccess = (form: FormData) => ({ personId: text(form, 'personId'), reason: text(form, 'reason') })

export async function disablePerson(_state: FormState, form: FormData): Promise<FormState> {
  return submit(
    'disable-person',
    form,
    () => aboutAccess(form),
    () => personAddress(text(form, 'personId')),
  )
}

export async function enablePerson(_state: FormState, form: FormData): Promise<FormState> {
  return submit(
    'enable-person',
    form,
    () => aboutAccess(form),
    () => personAddress(text(form, 'personId')),
  )
}
