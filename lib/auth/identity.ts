import { database } from '@/lib/db/client'
import { inTransaction, type Transaction } from '@/lib/db/transaction'
import { settings } from '@/lib/settings/settings'
import { INSTALLATION_TRAIL, lockTrail, openTrail, recordEntry } from '@/lib/trail/append-entry'
import { publishHead } from '@/lib/trail/publish-head'

interface Profile {
  readonly email?: string | undefined
  readonly email_verified?: boolean | undefined
}

const SIGNS_IN = { id: true, credentialEpoch: true, disabledAt: true } as const

/**
 * The person a sign-in at the identity provider stands for: the one bound to
 * that identity, or the one an administrator added with that verified address
 * and without a password, who is bound to it now. Nobody else.
 */
export async function personOfIdentity(subject: string, profile: Profile | undefined) {
  const identity = `${settings().identityProvider?.issuer} ${subject}`
  const bound = await database().person.findUnique({ where: { identity }, select: SIGNS_IN })
  if (bound) return bound.disabledAt ? undefined : bound
  const email = profile?.email?.trim().toLowerCase()
  if (!email || profile?.email_verified !== true) return undefined
  const now = await inTransaction((tx) => bindIn(tx, email, identity))
  if (now) await publishHead(now.entry)
  return now?.person
}

/** Binds the person of that address to the identity, with an entry in the installation's trail, as themselves. */
async function bindIn(tx: Transaction, email: string, identity: string) {
  await openTrail(tx, INSTALLATION_TRAIL)
  const head = await lockTrail(tx, INSTALLATION_TRAIL)
  if (!head) throw new Error('The installation has no trail.')
  const [person] = await tx.person.updateManyAndReturn({
    where: { email, passwordHash: null, identity: null, disabledAt: null },
    data: { identity },
    select: { ...SIGNS_IN, name: true },
  })
  if (!person) return undefined
  const entry = await recordEntry(tx, head, {
    at: new Date().toISOString(),
    actorId: person.id,
    actorName: person.name,
    command: 'bind-identity',
    payload: { person: person.name, personId: person.id, email, identity },
  })
  return { person, entry }
}
