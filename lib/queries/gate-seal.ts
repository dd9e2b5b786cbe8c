import { database } from '@/lib/db/client'
import { nativeSha256 } from '@/lib/trail/native-sha256'
import type { GateSignatureEntry } from '@/shared/gate/programme-state'
import { trailRoot } from '@/shared/trail/merkle'

/** What the trail's entries up to a gate's signature come to today, for the signature to be held against. */
export interface SealToday {
  readonly headHash: string
  readonly merkleRoot: string
}

/** The newest hash and the Merkle root over the entries that a signature covered, worked out anew; one statement. */
export async function sealToday(
  trailId: string,
  { trailSeq }: Pick<GateSignatureEntry, 'trailSeq'>,
): Promise<SealToday> {
  const entries = await database().trailEntry.findMany({
    where: { trailId, seq: { lte: trailSeq } },
    orderBy: { seq: 'asc' },
    select: { hash: true },
  })
  const hashes = entries.map(({ hash }) => hash)
  return { headHash: hashes.at(-1) ?? '', merkleRoot: trailRoot(hashes, nativeSha256) }
}
