import { revalidatePath } from 'next/cache'
import { redirect } from 'next/navigation'
import { deskAddress } from '@/app/addresses'
import { tellDone } from '@/app/forms/done-cookie'
import { typedIn, type FormState } from '@/app/forms/form-state'
import { text } from '@/app/forms/typed-text'
import { ONE_TIME_PASSWORD_FIRST } from '@/app/guard/person-let-in'
import { placeAddress } from '@/app/place-address'
import type { Outcome } from '@/lib/commands/outcome'
import { performUnparsed } from '@/lib/commands/perform'
import { signedIn, type SignedIn } from '@/lib/auth/session'
import type { Previewed } from '@/lib/commands/considered/what-it-changes'
import { worksEffect } from '@/lib/queries/works/works-effect'
import type { CommandName } from '@/shared/commands/all-faces'
import { Refused } from '@/shared/refused'

export type Done = Extract<Outcome, { ok: true }>

/**
 * Sends a form through the door. Taken: goes where the command leads, or where
 * `then` says, where it is told, unless that page tells it itself. Refused: the form comes back with the reason, the fields it is
 * about and what was typed; `toInput` may refuse too, by throwing `Refused`, what
 * no input can be made of.
 */
export async function submit(
  command: CommandName,
  form: FormData,
  toInput: () => unknown,
  then: (done: Done, form: FormData) => string = whereItLeads,
  saidThere = false,
): Promise<FormState> {
  const outcome = await send(command, form, toInput)
  if ('fields' in outcome) return outcome
  if (!saidThere) await tellDone(command, outcome.seq)
  // A way to another part of the same page would otherwise show the page as it was.
  revalidatePath('/', 'layout')
  redirect(then(outcome, form))
}

/** The same, for a form that stays where it is when it was taken: what was done, or the form as it comes back. */
export async function send(
  command: CommandName,
  form: FormData,
  toInput: () => unknown,
): Promise<Done | FormState> {
  const person = await signedIn()
  const unfit = unfitToSend(person)
  if (!person || unfit) return sentBack(form, unfit ?? '')
  const input = inputOrRefusal(toInput)
  if (input instanceof Refused) return sentBack(form, input.message, input.fields)
  const outcome = await performUnparsed(person.personId, command, input, {
    key: text(form, 'key'),
    proof: {
      password: text(form, 'password'),
      freshSignInAt: person.signedInAt,
      sessionId: person.sessionId,
    },
  })
  return outcome.ok ? outcome : sentBack(form, outcome.message, outcome.fields)
}

/** What a form would turn in the programmes of the works, if it was taken; nothing is stored. */
export async function previewAtWorks(
  command: Previewed,
  form: FormData,
  toInput: () => unknown,
): Promise<FormState> {
  const person = await signedIn()
  const unfit = unfitToSend(person)
  if (!person || unfit) return sentBack(form, unfit ?? '')
  try {
    return { fields: {}, typed: typedIn(form), worksEffect: await worksEffect(person, command, toInput()) }
  } catch (error) {
    if (error instanceof Refused) return sentBack(form, error.message, error.fields)
    throw error
  }
}

function inputOrRefusal(toInput: () => unknown): unknown {
  try {
    return toInput()
  } catch (error) {
    if (error instanceof Refused) return error
    throw error
  }
}

/** A form as it comes back: why, what is wrong by field, and what was typed. */
export const sentBack = (form: FormData, message: string, fields: FormState['fields'] = {}): FormState => ({
  message,
  fields,
  typed: typedIn(form),
})

/** Why nobody can send a form from this browser just now; it stays as it is, with what was typed. */
export function unfitToSend(person: SignedIn | undefined): string | undefined {
  if (!person)
    return 'Your session has ended. Sign in again in another tab, then send this form once more: what you typed is still here.'
  return person.mustChangePassword ? ONE_TIME_PASSWORD_FIRST : undefined
}

/** Where what was done can be seen. */
export const whereItLeads = ({ leads }: Done, form: FormData): string =>
  leads ? placeAddress(text(form, 'programme'), leads) : deskAddress()
