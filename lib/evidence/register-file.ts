import { database } from '@/lib/db/client'
import type { StoredContent } from '@/lib/evidence/store'

/** Notes what the store holds, and when it was last sent. Bookkeeping, not a decision: nothing refers to the file until a command does. */
export async function registerFile(
  { sha256, size, mediaType }: StoredContent,
  at = new Date(),
): Promise<void> {
  await database().storedFile.upsert({
    where: { sha256 },
    create: { sha256, size, mediaType, storedAt: at },
    update: { storedAt: at },
  })
}
