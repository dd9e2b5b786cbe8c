import type { Outcome } from '@/lib/commands/outcome'
import type { Transaction } from '@/lib/db/transaction'
import { nativeSha256 } from '@/lib/trail/native-sha256'
import type { CommandName } from '@/shared/commands/all-faces'
import { Refused } from '@/shared/refused'

const KEY = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/

/** What the same person's same call answered before; the caller holds the lock that makes a twin wait. */
export async function recallOutcome(
  tx: Transaction,
  actorId: string,
  key: string,
  command: CommandName,
  input: unknown,
): Promise<Outcome | undefined> {
  if (!KEY.test(key))
    throw new Refused(
      'The form has lost its number. Load the page again; what you typed is still there to copy.',
    )
  const known = await tx.idempotency.findUnique({ where: { actorId_key: { actorId, key } } })
  if (!known) return undefined
  if (known.command !== command || known.inputHash !== hashOf(input)) {
    throw new Refused(
      'This form was already sent, with other content. Load the page again to see what stands, then change it.',
    )
  }
  return known.outcome as unknown as Outcome
}

export async function rememberOutcome(
  tx: Transaction,
  actorId: string,
  key: string,
  command: CommandName,
  input: unknown,
  outcome: Outcome,
  at: string,
): Promise<void> {
  await tx.idempotency.create({
    data: { actorId, key, command, inputHash: hashOf(input), outcome: outcome as object, at },
  })
}

const hashOf = (input: unknown): string => nativeSha256(JSON.stringify(input) ?? '')
