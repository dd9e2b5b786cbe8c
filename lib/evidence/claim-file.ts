import type { Transaction } from '@/lib/db/transaction'
import { isReached, type FileReader } from '@/lib/evidence/reached-file'

/**
 * Marks a stored file as wanted now, in the transaction of the command that is to
 * name it; null when the store does not hold it, or not for this person in this programme. The write makes a
 * sweep wait for the command, or the command find the file gone: never both have their way.
 */
export async function claimFile(
  tx: Transaction,
  sha256: string,
  reader: FileReader,
): Promise<{ size: number; mediaType: string } | null> {
  const [claimed] = await tx.$queryRaw<{ size: number; mediaType: string }[]>`
    UPDATE "StoredFile" AS file SET "storedAt" = ${new Date()}
    WHERE file."sha256" = ${sha256} AND ${isReached(reader)}
    RETURNING file."size", file."mediaType"`
  return claimed ?? null
}
