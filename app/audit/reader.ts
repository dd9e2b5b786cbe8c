import { signedIn, type SignedIn } from '@/lib/auth/session'

/** Whom an export or a verification over several trails is for, or the answer to give instead. */
export async function auditReader(): Promise<{ person: SignedIn } | { answer: Response }> {
  const person = await signedIn()
  if (!person) return { answer: new Response('Sign in first.', { status: 401 }) }
  if (person.administrator)
    return { answer: new Response('An administrator reads no programme.', { status: 403 }) }
  return { person }
}
