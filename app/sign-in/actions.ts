'use server'
import { headers } from 'next/headers'
import { redirect } from 'next/navigation'
import { typedIn, type FormState } from '@/app/forms/form-state'
import { text } from '@/app/forms/typed-text'
import { signInAddress } from '@/app/addresses'
import { placeWithin } from '@/app/sign-in/place-within'
import { checkPassword } from '@/lib/auth/check-password'
import { endSession, startSession } from '@/lib/auth/session'
import { noteSignIn } from '@/lib/auth/sign-in-log'
import { visitorFrom } from '@/lib/auth/visitor'

export async function signIn(_state: FormState, form: FormData): Promise<FormState> {
  const password = form.get('password')
  const typed = { email: text(form, 'email'), password: typeof password === 'string' ? password : '' }
  const visitor = visitorFrom(await headers())
  const checked = await checkPassword(typed, visitor)
  if (!checked.ok) return { message: checked.message, fields: {}, typed: typedIn(form) }
  noteSignIn(visitor, { personId: checked.personId })
  await startSession(checked.personId, checked.credentialEpoch)
  redirect(placeWithin(text(form, 'then')))
}

export async function signOut(): Promise<void> {
  await endSession()
  redirect(signInAddress())
}
