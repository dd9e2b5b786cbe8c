import { cache } from 'react'
import { database } from '@/lib/db/client'
import type { Transaction } from '@/lib/db/transaction'
import { INSTALLATION_TRAIL } from '@/lib/trail/append-entry'

/**
 * A password that an administrator gave a person: whoever knows it can sign as them, and the password chosen in its
 * place is no proof of who chose it. Derived from the installation's trail; it stands beside every later signature.
 */
export interface PasswordReset {
  readonly personId: string
  readonly at: string
  readonly byId: string
  readonly byName: string
  /** When another password was first chosen in its place; null while it was not. */
  readonly changedAt: string | null
}

/** The resets of a person, or of everybody, oldest first: two statements, and one where there is none. */
export async function readResets(tx: Transaction, personId?: string): Promise<readonly PasswordReset[]> {
  const given = await tx.trailEntry.findMany({
    where: {
      trailId: INSTALLATION_TRAIL,
      command: 'reset-password',
      ...(personId ? { payload: { contains: `"personId":"${personId}"` } } : {}),
    },
    orderBy: { seq: 'asc' },
  })
  const resets = given.map((entry) => ({ ...entry, personId: personIn(entry.payload) }))
  if (resets.length === 0) return []
  const changes = await tx.trailEntry.findMany({
    where: {
      trailId: INSTALLATION_TRAIL,
      command: 'change-own-password',
      actorId: { in: [...new Set(resets.map((reset) => reset.personId))] },
    },
    orderBy: { seq: 'asc' },
    select: { actorId: true, seq: true, at: true },
  })
  return resets.map(({ personId: of, seq, at, actorId, actorName }) => ({
    personId: of,
    at,
    byId: actorId,
    byName: actorName,
    changedAt: changes.find((change) => change.actorId === of && change.seq > seq)?.at ?? null,
  }))
}

/** Everybody's resets, once a request. */
export const allResets = cache(() => readResets(database()))

/** The newest reset of a person before a moment. */
export const resetBefore = (
  resets: readonly PasswordReset[],
  personId: string,
  at: string | Date,
): PasswordReset | undefined =>
  resets.findLast((reset) => reset.personId === personId && new Date(reset.at) <= new Date(at))

const personIn = (payload: string): string => String((JSON.parse(payload) as { personId: unknown }).personId)
