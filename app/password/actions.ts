'use server'
import { randomUUID } from 'node:crypto'
import { redirect } from 'next/navigation'
import { deskAddress, passwordAddress, signInAddress } from '@/app/addresses'
import type { FormState } from '@/app/forms/form-state'
import { text } from '@/app/forms/typed-text'
import { lengthFault, passwordFault } from '@/lib/auth/acceptable-password'
import { hashPassword } from '@/lib/auth/password'
import { signedIn, startSession, type SignedIn } from '@/lib/auth/session'
import { endSessionOf } from '@/lib/auth/session-store'
import { verifySignature } from '@/lib/auth/signature'
import { perform } from '@/lib/commands/perform'
import { Refused } from '@/shared/refused'

/** Changes the person's own password; every other session of theirs ends. */
export async function changePassword(_state: FormState, form: FormData): Promise<FormState> {
  const person = await signedIn()
  if (!person) redirect(signInAddress())
  const [old, wanted, again] = ['password', 'newPassword', 'newPasswordAgain'].map((name) =>
    String(form.get(name) ?? ''),
  )
  try {
    const refused =
      mistypedRefusal(old ?? '', wanted ?? '', again ?? '') ?? (await oldRefusal(person, old ?? ''))
    if (refused) return refused
    const fault = passwordFault(wanted ?? '', person)
    if (fault) return refusedBy(fault, 'newPassword')
    const outcome = await perform(
      person.personId,
      'change-own-password',
      { passwordHash: await hashPassword(wanted ?? '') },
      { key: text(form, 'key') || randomUUID() },
    )
    if (!outcome.ok) return { message: outcome.message, fields: outcome.fields, typed: {} }
    await startSession(person.personId, outcome.result.credentialEpoch)
  } catch (error) {
    if (error instanceof Refused) return { message: error.message, fields: error.fields, typed: {} }
    throw error
  }
  redirect(deskAddress())
}

/** Ends one of the person's own sessions; this browser's too, when it is that one. */
export async function endOwnSession(form: FormData): Promise<void> {
  const person = await signedIn()
  if (!person) redirect(signInAddress())
  const sessionId = text(form, 'sessionId')
  if (UUID.test(sessionId)) await endSessionOf(person.personId, sessionId)
  redirect(passwordAddress())
}

const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/

const refusedBy = (message: string, field: string): FormState => ({
  message,
  fields: { [field]: message },
  typed: {},
})

function mistypedRefusal(old: string, wanted: string, again: string): FormState | undefined {
  const length = lengthFault(wanted)
  if (length) return refusedBy(length, 'newPassword')
  if (wanted === old) return refusedBy('The new password is the old one.', 'newPassword')
  if (wanted !== again) return refusedBy('The two new passwords differ.', 'newPasswordAgain')
  return undefined
}

/** The same check, and the same slowing down, as for a signature. */
async function oldRefusal({ personId, sessionId }: SignedIn, old: string): Promise<FormState | undefined> {
  try {
    await verifySignature(personId, { password: old, sessionId }, { purpose: 'change password' })
    return undefined
  } catch (error) {
    if (error instanceof Refused) return { message: error.message, fields: error.fields, typed: {} }
    throw error
  }
}
