import { randomUUID } from 'node:crypto'
import { oneTimePasswordIsOver, oneTimePasswordUntil } from '@/lib/auth/one-time-password'
import { hashPassword, oneTimePassword } from '@/lib/auth/password'
import type { Person } from '@/lib/db/generated/client'
import { inTransaction, type Transaction } from '@/lib/db/transaction'
import { INSTALLATION_TRAIL, lockTrail, openTrail, recordEntry } from '@/lib/trail/append-entry'
import type { TrailHead } from '@/shared/trail/entry'

/** The first administrator with a one-time password, to be shown this once. */
export interface FirstAdministrator {
  readonly id: string
  readonly email: string
  readonly password: string
  readonly until: Date
}

/**
 * Creates the first administrator of an installation that has nobody yet, or gives the one there is a new one-time
 * password when the last expired before it was changed; undefined when neither is so.
 * The one change that nobody could be authorised for.
 */
export async function createFirstAdministrator(
  { email, name }: { email: string; name: string } = {
    email: 'administrator@localhost',
    name: 'Administrator',
  },
  at = new Date(),
): Promise<FirstAdministrator | undefined> {
  const password = oneTimePassword()
  const given = { passwordHash: await hashPassword(password), oneTimePasswordUntil: oneTimePasswordUntil(at) }
  return inTransaction(async (tx) => {
    await openTrail(tx, INSTALLATION_TRAIL)
    const head = await lockTrail(tx, INSTALLATION_TRAIL)
    if (!head) return undefined
    const [person, ...others] = await tx.person.findMany({ take: 2 })
    const known = person
      ? others.length === 0 && person.administrator && oneTimePasswordIsOver(person, at)
        ? await renew(tx, head, person, given, at)
        : undefined
      : await create(tx, head, { email, name }, given, at)
    return known && { ...known, password, until: given.oneTimePasswordUntil }
  })
}

interface Given {
  readonly passwordHash: string
  readonly oneTimePasswordUntil: Date
}

async function create(
  tx: Transaction,
  head: TrailHead,
  { email, name }: { email: string; name: string },
  given: Given,
  at: Date,
) {
  const id = randomUUID()
  const now = at.toISOString()
  await tx.person.create({
    data: { id, email, name, ...given, administrator: true, mustChangePassword: true, createdAt: now },
  })
  await recordEntry(tx, head, {
    at: now,
    actorId: id,
    actorName: name,
    command: 'first-administrator',
    payload: {
      person: name,
      personId: id,
      email,
      rights: 'administrator',
      oneTimePasswordUntil: given.oneTimePasswordUntil.toISOString(),
    },
  })
  return { id, email }
}

async function renew(tx: Transaction, head: TrailHead, person: Person, given: Given, at: Date) {
  const { id, email, name, credentialEpoch } = person
  await tx.person.update({ where: { id }, data: { ...given, credentialEpoch: credentialEpoch + 1 } })
  await recordEntry(tx, head, {
    at: at.toISOString(),
    actorId: id,
    actorName: name,
    command: 'renew-first-administrator',
    payload: {
      person: name,
      personId: id,
      oneTimePasswordUntil: given.oneTimePasswordUntil.toISOString(),
    },
  })
  return { id, email }
}
