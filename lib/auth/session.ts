import { cookies, headers } from 'next/headers'
import { decode, encode } from 'next-auth/jwt'
import { cache } from 'react'
import { oneTimePasswordIsOver } from '@/lib/auth/one-time-password'
import { claimsInForce, SESSION_SECONDS, type SessionClaims } from '@/lib/auth/session-claims'
import { endSessionOf, openSession, personOfSession } from '@/lib/auth/session-store'
import { noteSignOut } from '@/lib/auth/sign-in-log'
import { visitorFrom } from '@/lib/auth/visitor'
import { settings } from '@/lib/settings/settings'
import type { Department } from '@/shared/plan/department'

/** The person signed in, as the screens need to know them. */
export interface SignedIn {
  readonly personId: string
  readonly name: string
  readonly email: string
  readonly auditor: boolean
  readonly administrator: boolean
  /** The department in which they belong to the works, if to any. */
  readonly worksDepartment: Department | null
  readonly mustChangePassword: boolean
  /** Signs with a password; otherwise by a fresh sign-in at the identity provider. */
  readonly hasPassword: boolean
  readonly signedInAt: number
  readonly sessionId: string
}

/** Who is signed in; undefined when nobody, or when the session has ended. Asked once a request. */
export const signedIn = cache(async (): Promise<SignedIn | undefined> => {
  const claims = await readClaims()
  if (!claims) return undefined
  const person = await personOfSession(claims)
  if (!person || oneTimePasswordIsOver(person, new Date())) return undefined
  const { name, email, auditor, administrator, worksDepartment, mustChangePassword } = person
  return {
    personId: person.id,
    name,
    email,
    auditor,
    administrator,
    worksDepartment: worksDepartment as Department | null,
    mustChangePassword,
    hasPassword: person.passwordHash !== null,
    signedInAt: claims.signedInAt,
    sessionId: claims.sessionId,
  }
})

/** Starts a session in this browser, the same as the identity provider's callback would. */
export async function startSession(personId: string, credentialEpoch: number): Promise<void> {
  const signedInAt = Math.floor(Date.now() / 1000)
  const claims = await openSession({ personId, credentialEpoch, signedInAt }, visitorFrom(await headers()))
  const token = await encode({ token: claims, secret: secret(), maxAge: SESSION_SECONDS })
  ;(await cookies()).set(cookieName(), token, {
    httpOnly: true,
    sameSite: 'lax',
    path: '/',
    secure: isSecure(),
    maxAge: SESSION_SECONDS,
  })
}

/** Ends the session of this browser, on the server and in the browser. */
export async function endSession(): Promise<void> {
  const claims = await readClaims()
  if (claims) {
    await endSessionOf(claims.personId, claims.sessionId)
    noteSignOut(claims.personId)
  }
  ;(await cookies()).delete(cookieName())
}

async function readClaims(): Promise<SessionClaims | undefined> {
  const token = (await cookies()).get(cookieName())?.value
  if (!token) return undefined
  const decoded = await decode({ token, secret: secret() }).catch(() => null)
  return claimsInForce(decoded, Date.now() / 1000)
}

/** The names next-auth gives its cookie, by whether the address is https. */
const isSecure = (): boolean => settings().url.startsWith('https://')
const cookieName = (): string => (isSecure() ? '__Secure-next-auth.session-token' : 'next-auth.session-token')

function secret(): string {
  const { sessionSecret } = settings()
  if (!sessionSecret)
    throw new Error('There is no NEXTAUTH_SECRET. `npm start` keeps one in the data folder.')
  return sessionSecret
}
