import type { Transaction } from '@/lib/db/transaction'

/**
 * Marks a stored file as wanted now, in the transaction of the command that is to
 * name it; null when the store does not hold it. The write makes a sweep wait for
 * the command, or the command find the file gone: never both have their way.
 */
export async function claimFile(
  tx: Transaction,
  sha256: string,
): Promise<{ size: number; mediaType: string } | null> {
  const [claimed] = await tx.storedFile.updateManyAndReturn({
    where: { sha256 },
    data: { storedAt: new Date() },
    select: { size: true, mediaType: true },
  })
  return claimed ?? null
}
