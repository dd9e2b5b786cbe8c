import { revalidatePath } from 'next/cache'
import { redirect } from 'next/navigation'
import { typedIn, type FormState } from '@/app/forms/form-state'
import { ONE_TIME_PASSWORD_FIRST } from '@/app/guard/person-let-in'
import type { Outcome } from '@/lib/commands/outcome'
import { perform } from '@/lib/commands/perform'
import { signedIn, type SignedIn } from '@/lib/auth/session'
import type { CommandName } from '@/shared/policy'
import { Refused } from '@/shared/refused'

type Done = Extract<Outcome, { ok: true }>

/**
 * Sends a form through the door. Taken: goes where `onDone` says. Refused: the
 * form comes back with the reason, the fields it is about and what was typed; `toInput` may refuse too,
 * by throwing `Refused`, what no input can be made of.
 */
export async function submit(
  command: CommandName,
  form: FormData,
  toInput: (form: FormData) => unknown,
  onDone: (done: Done) => string,
): Promise<FormState> {
  const person = await signedIn()
  const unfit = unfitToSend(person)
  if (!person || unfit) return { message: unfit ?? '', fields: {}, typed: typedIn(form) }
  const input = inputFrom(toInput, form)
  if (input instanceof Refused) return { message: input.message, fields: input.fields, typed: typedIn(form) }
  const outcome = await perform(person.personId, command, input, {
    key: text(form, 'key'),
    proof: {
      password: text(form, 'password'),
      freshSignInAt: person.signedInAt,
      sessionId: person.sessionId,
    },
  })
  if (!outcome.ok) return { message: outcome.message, fields: outcome.fields, typed: typedIn(form) }
  // A way to another part of the same page would otherwise show the page as it was.
  revalidatePath('/', 'layout')
  redirect(onDone(outcome))
}

function inputFrom(toInput: (form: FormData) => unknown, form: FormData): unknown {
  try {
    return toInput(form)
  } catch (error) {
    if (error instanceof Refused) return error
    throw error
  }
}

/** Why nobody can send a form from this browser just now; it stays as it is, with what was typed. */
export function unfitToSend(person: SignedIn | undefined): string | undefined {
  if (!person)
    return 'Your session has ended. Sign in again in another tab, then send this form once more: what you typed is still here.'
  return person.mustChangePassword ? ONE_TIME_PASSWORD_FIRST : undefined
}

/** A text field, trimmed; '' when it is not there. */
export function text(form: FormData, name: string): string {
  const value = form.get(name)
  return typeof value === 'string' ? value.trim() : ''
}

/**
 * A number as a person types it; a text that is none is passed on as it is, so
 * that the command's own sentence says so. Empty gives undefined.
 */
export function number(form: FormData, name: string): number | string | undefined {
  const typed = text(form, name)
  if (!typed) return undefined
  const value = Number(typed.replace('−', '-').replace(/[\s\u202f]/g, ''))
  return Number.isNaN(value) ? typed : value
}

/** The same, where nothing typed means none. */
export const numberOrNull = (form: FormData, name: string): number | string | null =>
  number(form, name) ?? null

export const ticked = (form: FormData, name: string): boolean => form.get(name) !== null
