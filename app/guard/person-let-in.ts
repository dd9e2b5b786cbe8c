import { passwordAddress, signInAddress } from '@/app/addresses'
import type { NotLetIn } from '@/app/guard/refused-answer'
import { signedIn, type SignedIn } from '@/lib/auth/session'

export const ONE_TIME_PASSWORD_FIRST =
  'You came in with a one-time password. Choose a password of your own first, under your name.'

/**
 * The person signed in; without a session, or while it rests on a one-time password, why nobody is let in and which
 * page mends that. `then` is the page to come back to.
 */
export async function personLetIn(
  then?: string,
): Promise<{ readonly person: SignedIn } | Required<NotLetIn>> {
  const person = await signedIn()
  if (!person) return { status: 401, message: 'Sign in first.', goTo: signInAddress(then) }
  if (person.mustChangePassword)
    return { status: 403, message: ONE_TIME_PASSWORD_FIRST, goTo: passwordAddress() }
  return { person }
}
