import { database } from '@/lib/db/client'
import { settings } from '@/lib/settings/settings'

interface Profile {
  readonly email?: string | undefined
  readonly email_verified?: boolean | undefined
}

/**
 * The person a sign-in at the identity provider stands for: the one bound to
 * that identity, or the one an administrator added with that verified address
 * and without a password, who is bound to it now. Nobody else.
 */
export async function personOfIdentity(subject: string, profile: Profile | undefined) {
  const identity = `${settings().identityProvider?.issuer} ${subject}`
  const select = { id: true, credentialEpoch: true, disabledAt: true } as const
  const bound = await database().person.findUnique({ where: { identity }, select })
  if (bound) return bound.disabledAt ? undefined : bound
  const email = profile?.email?.trim().toLowerCase()
  if (!email || profile?.email_verified !== true) return undefined
  const { count } = await database().person.updateMany({
    where: { email, passwordHash: null, identity: null, disabledAt: null },
    data: { identity },
  })
  return count === 1
    ? ((await database().person.findUnique({ where: { identity }, select })) ?? undefined)
    : undefined
}
