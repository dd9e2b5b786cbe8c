import { database } from '@/lib/db/client'
import { isReached, type FileReader } from '@/lib/evidence/reached-file'
import { isUuid } from '@/lib/queries/from-address'

/** The stored file behind a piece of evidence of this programme, withdrawn or not, or behind a file of an answer. */
export async function readStoredFile(programmeId: string, id: string) {
  if (!isUuid(id)) return undefined
  const select = { sha256: true, fileName: true } as const
  const evidence =
    (await database().evidence.findFirst({ where: { id, trailId: programmeId }, select })) ??
    (await database().answerFile.findFirst({ where: { id, programmeId }, select }))
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

/** Whether a stored file of that hash is there for this person in this programme. */
export async function isFileReached(sha256: string, reader: FileReader): Promise<boolean> {
  if (!/^[0-9a-f]{64}$/.test(sha256)) return false
  const found = await database().$queryRaw<unknown[]>`
    SELECT FROM "StoredFile" AS file WHERE file."sha256" = ${sha256} AND ${isReached(reader)}`
  return found.length > 0
}
