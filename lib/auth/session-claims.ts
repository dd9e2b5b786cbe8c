import { z } from 'zod'

/** A session ends after so long, whatever happens (NIST SP 800-63B, AAL2: 12 hours). */
export const SESSION_SECONDS = 12 * 60 * 60

/** What a session's cookie says. One of an earlier version, without its number, is no longer taken. */
export const sessionClaims = z.object({
  personId: z.uuid(),
  /** The number of its row on the server: without that row it is worth nothing. */
  sessionId: z.uuid(),
  /** Must equal the person's own: it is raised when the password changes or access ends. */
  credentialEpoch: z.number().int(),
  /** Epoch seconds. */
  signedInAt: z.number(),
})
export type SessionClaims = z.infer<typeof sessionClaims>

/** What a session says while it lasts: undefined twelve hours after the sign-in, however often it was renewed. */
export function claimsInForce(decoded: unknown, nowS: number): SessionClaims | undefined {
  const claims = sessionClaims.safeParse(decoded).data
  return claims && nowS - claims.signedInAt < SESSION_SECONDS ? claims : undefined
}
