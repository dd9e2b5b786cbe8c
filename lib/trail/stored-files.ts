import type { RowReader } from '@/lib/db/row-reader'
import { EvidenceDamaged, type EvidenceStore } from '@/lib/evidence/store'
import { log } from '@/lib/log/log'
import type { FileState, RegisteredFile } from '@/shared/stored/compare-files'

const FILES_AT_ONCE = 500

/** What the register says of each of these files; those it does not know are not in the answer. */
export async function registeredFiles(
  reader: RowReader,
  hashes: readonly string[],
): Promise<ReadonlyMap<string, RegisteredFile>> {
  const registered = new Map<string, RegisteredFile>()
  for (let first = 0; first < hashes.length; first += FILES_AT_ONCE) {
    const rows = await reader.rows<RegisteredFile & { sha256: string }>(
      'SELECT "sha256", "size", "mediaType" FROM "StoredFile" WHERE "sha256" = ANY($1)',
      [hashes.slice(first, first + FILES_AT_ONCE)],
    )
    for (const { sha256, ...row } of rows) registered.set(sha256, row)
  }
  return registered
}

/** Reads a file of the store whole, and says whether its bytes give the hash it lies under. */
export async function fileState(store: EvidenceStore, sha256: string): Promise<FileState> {
  try {
    if (!(await store.has(sha256))) return { kind: 'missing' }
    let size = 0
    for await (const chunk of await store.open(sha256)) size += (chunk as Buffer).length
    return { kind: 'whole', size }
  } catch (error) {
    if (error instanceof EvidenceDamaged) return { kind: 'changed' }
    log.error('A file of the evidence store could not be read.', { sha256, error })
    return { kind: 'unreadable' }
  }
}
