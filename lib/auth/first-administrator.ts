import { randomUUID } from 'node:crypto'
import { hashPassword, oneTimePassword } from '@/lib/auth/password'
import { inTransaction } from '@/lib/db/transaction'
import { INSTALLATION_TRAIL, lockTrail, openTrail, recordEntry } from '@/lib/trail/append-entry'

/**
 * Creates the first administrator of an installation that has nobody yet, and
 * answers their address and one-time password; undefined when there is somebody.
 * The one change that nobody could be authorised for.
 */
export async function createFirstAdministrator(
  { email, name }: { email: string; name: string } = {
    email: 'administrator@localhost',
    name: 'Administrator',
  },
  at = new Date(),
): Promise<{ id: string; email: string; password: string } | undefined> {
  const password = oneTimePassword()
  const passwordHash = await hashPassword(password)
  const id = randomUUID()
  const now = at.toISOString()
  return inTransaction(async (tx) => {
    await openTrail(tx, INSTALLATION_TRAIL)
    const head = await lockTrail(tx, INSTALLATION_TRAIL)
    if (!head || (await tx.person.count()) > 0) return undefined
    await tx.person.create({
      data: { id, email, name, passwordHash, administrator: true, mustChangePassword: true, createdAt: now },
    })
    await recordEntry(tx, head, {
      at: now,
      actorId: id,
      actorName: name,
      command: 'first-administrator',
      payload: { person: name, personId: id, email, rights: 'administrator' },
    })
    return { id, email, password }
  })
}
