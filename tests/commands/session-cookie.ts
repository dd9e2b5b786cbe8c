import { encode } from 'next-auth/jwt'
import { database } from '@/lib/db/client'
import { SESSION_SECONDS } from '@/lib/auth/session-claims'
import { openSession } from '@/lib/auth/session-store'

const SECRET = 'only for these tests, thirty-two characters'
const COOKIE = 'next-auth.session-token'

// The settings are read once, whoever asks first.
process.env.NEXTAUTH_SECRET = SECRET

let cookie: string | undefined

/** Stands in for the framework's cookies of a request, where the session is the one set last. */
export const REQUEST_HEADERS = {
  cookies: async () => ({
    get: (name: string) => (name === COOKIE && cookie ? { name, value: cookie } : undefined),
    getAll: () => [],
  }),
  headers: async () => new Headers(),
}

export function signOutHere(): void {
  cookie = undefined
}

/** From here on requests carry a session of this person, made as a sign-in makes it. */
export async function signInHere(personId: string): Promise<void> {
  const { credentialEpoch } = await database().person.findUniqueOrThrow({ where: { id: personId } })
  const token = await openSession(
    { personId, credentialEpoch, signedInAt: Math.floor(Date.now() / 1000) },
    { address: '192.0.2.1', origin: '192.0.2.1', userAgent: 'A browser' },
  )
  cookie = await encode({ token, secret: SECRET, maxAge: SESSION_SECONDS })
}
