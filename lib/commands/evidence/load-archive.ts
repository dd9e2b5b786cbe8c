import type { Transaction } from '@/lib/db/transaction'
import { Refused } from '@/shared/refused'

/** The evidence of a programme that holds the files of a board. Errors: Refused, where it is withdrawn or no archive. */
export async function loadArchive(tx: Transaction, programmeId: string, evidenceId: string) {
  const evidence = await tx.evidence.findFirst({
    where: { id: evidenceId, trailId: programmeId, withdrawnAt: null },
  })
  if (!evidence?.sha256) throw new Refused('This evidence is not attached any more, or is a link.')
  const stored = await tx.storedFile.findUnique({ where: { sha256: evidence.sha256 } })
  if (stored?.mediaType !== 'application/zip') throw new Refused('This evidence is no zip archive.')
  return { ...evidence, sha256: evidence.sha256 }
}
