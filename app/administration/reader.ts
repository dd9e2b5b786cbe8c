import { signedIn } from '@/lib/auth/session'

/** Who reads the installation's own trail: its administrators, and auditors. Otherwise the answer to give. */
export async function installationRefusal(): Promise<Response | undefined> {
  const person = await signedIn()
  if (!person) return new Response('Sign in first.', { status: 401 })
  if (person.administrator || person.auditor) return undefined
  return new Response('Only an administrator or an auditor may read this.', { status: 403 })
}
