'use server'
import { redirect } from 'next/navigation'
import { typedIn, type FormState } from '@/app/forms/form-state'
import { text } from '@/app/forms/submit'
import { signInAddress } from '@/app/addresses'
import { placeWithin } from '@/app/sign-in/place-within'
import { checkPassword } from '@/lib/auth/check-password'
import { endSession, startSession } from '@/lib/auth/session'

export async function signIn(_state: FormState, form: FormData): Promise<FormState> {
  const password = form.get('password')
  const checked = await checkPassword(text(form, 'email'), typeof password === 'string' ? password : '')
  if (!checked.ok) return { message: checked.says, fields: {}, typed: typedIn(form) }
  await startSession(checked.personId, checked.credentialEpoch)
  redirect(placeWithin(text(form, 'then')))
}

export async function signOut(): Promise<void> {
  await endSession()
  redirect(signInAddress())
}
