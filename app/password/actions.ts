'use server'
import { randomUUID } from 'node:crypto'
import { redirect } from 'next/navigation'
import { deskAddress, signInAddress } from '@/app/addresses'
import type { FormState } from '@/app/forms/form-state'
import { text } from '@/app/forms/submit'
import { hashPassword, LONGEST_PASSWORD, SHORTEST_PASSWORD } from '@/lib/auth/password'
import { signedIn, startSession } from '@/lib/auth/session'
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
  const refused =
    wantedRefusal(old ?? '', wanted ?? '', again ?? '') ?? (await oldRefusal(person.personId, old ?? ''))
  if (refused) return refused
  const outcome = await perform(
    person.personId,
    'change-own-password',
    { passwordHash: await hashPassword(wanted ?? '') },
    { key: text(form, 'key') || randomUUID() },
  )
  if (!outcome.ok) return { message: outcome.message, fields: outcome.fields, typed: {} }
  await startSession(person.personId, Number(outcome.result['credentialEpoch']))
  redirect(deskAddress())
}

const refusedBy = (message: string, field: string): FormState => ({
  message,
  fields: { [field]: message },
  typed: {},
})

function wantedRefusal(old: string, wanted: string, again: string): FormState | undefined {
  if ([...wanted].length < SHORTEST_PASSWORD)
    return refusedBy(
      `The new password needs ${SHORTEST_PASSWORD} characters or more. Several words do well.`,
      'newPassword',
    )
  if (wanted.length > LONGEST_PASSWORD)
    return refusedBy(`The new password has at most ${LONGEST_PASSWORD} characters.`, 'newPassword')
  if (wanted === old) return refusedBy('The new password is the old one.', 'newPassword')
  if (wanted !== again) return refusedBy('The two new passwords differ.', 'newPasswordAgain')
  return undefined
}

/** The same check, and the same slowing down, as for a signature. */
async function oldRefusal(personId: string, old: string): Promise<FormState | undefined> {
  try {
    await verifySignature(personId, { password: old })
    return undefined
  } catch (error) {
    if (error instanceof Refused)
      return { message: error.message.replace(' Nothing was signed.', ''), fields: error.fields, typed: {} }
    throw error
  }
}
