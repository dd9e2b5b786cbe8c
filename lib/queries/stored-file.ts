import { database } from '@/lib/db/client'
import { isUuid } from '@/lib/queries/from-address'

/** The stored file behind a piece of evidence of this programme, withdrawn or not. */
export async function readStoredFile(programmeId: string, evidenceId: string) {
  if (!isUuid(evidenceId)) return undefined
  const evidence = await database().evidence.findFirst({
    where: { id: evidenceId, programmeId },
    select: { sha256: true, fileName: true },
  })
  if (!evidence?.sha256) return undefined
  const stored = await database().storedFile.findUnique({ where: { sha256: evidence.sha256 } })
  return stored
    ? {
        sha256: stored.sha256,
        size: stored.size,
        mediaType: stored.mediaType,
        fileName: evidence.fileName ?? stored.sha256,
      }
    : undefined
}
