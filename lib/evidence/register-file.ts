import { inTransaction } from '@/lib/db/transaction'
import type { FileReader } from '@/lib/evidence/reached-file'
import type { StoredContent } from '@/lib/evidence/store'

/**
 * Notes what the store holds, when it was last sent, by whom and for which programme. Bookkeeping, not a decision:
 * nothing refers to the file until a command does, and until then it is there for its sender alone.
 */
export async function registerFile(
  { sha256, size, mediaType }: StoredContent,
  { personId, trailId }: FileReader,
  at = new Date(),
): Promise<void> {
  await inTransaction(async (tx) => {
    await tx.storedFile.upsert({
      where: { sha256 },
      create: { sha256, size, mediaType, storedAt: at },
      update: { storedAt: at },
    })
    await tx.upload.upsert({
      where: { sha256_personId_trailId: { sha256, personId, trailId } },
      create: { sha256, personId, trailId, at },
      update: { at },
    })
  })
}
