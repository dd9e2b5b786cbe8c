import type { Transaction } from '@/lib/db/transaction'
import { nativeSha256 } from '@/lib/trail/native-sha256'
import { appendEntry, type EntryDraft, type TrailEntry, type TrailHead } from '@/shared/trail/entry'

/** The chain of what is done to people and instruments, outside any programme. */
export const INSTALLATION_TRAIL = 'installation'

/**
 * Locks a trail, and with it all that it is about, until the transaction ends.
 * Undefined when there is no such trail.
 */
export async function lockTrail(tx: Transaction, trailId: string): Promise<TrailHead | undefined> {
  const rows = await tx.$queryRaw<{ seq: number; headHash: string }[]>`
    SELECT "seq", "headHash" FROM "Trail" WHERE "id" = ${trailId} FOR UPDATE`
  return rows[0] && { trailId, seq: rows[0].seq, hash: rows[0].headHash }
}

/** Opens an empty trail; a no-op when it is there already. */
export async function openTrail(tx: Transaction, trailId: string): Promise<void> {
  await tx.$executeRaw`INSERT INTO "Trail" ("id", "seq", "headHash") VALUES (${trailId}, 0, '') ON CONFLICT DO NOTHING`
}

/** Appends one entry behind the head, which the caller holds locked. */
export async function recordEntry(
  tx: Transaction,
  head: TrailHead,
  draft: Omit<EntryDraft, 'trailId'>,
): Promise<TrailEntry> {
  const entry = appendEntry(
    head.seq === 0 ? undefined : head,
    { ...draft, trailId: head.trailId },
    nativeSha256,
  )
  await tx.trailEntry.create({ data: entry })
  await tx.trail.update({ where: { id: head.trailId }, data: { seq: entry.seq, headHash: entry.hash } })
  return entry
}
