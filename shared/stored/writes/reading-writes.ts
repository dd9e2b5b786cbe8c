import type { JsonValue } from '@/shared/trail/canonical-json'
import type { ExpectedRows } from '../expected-rows'
import type { SpokenEntry } from '../spoken-entry'

/** What of a batch's readings is compared: how many they are, and the SHA-256 of their columns as stored. */
export const readingsAsCompared = (count: JsonValue, columnsSha256: string): JsonValue => ({
  count,
  columnsSha256,
})

/** The batch of readings that an entry stored, of a lot's test or of a log. */
export function writeBatch(
  { at, actorId, said }: SpokenEntry,
  rows: ExpectedRows,
  of: { readonly lotTestId: JsonValue | undefined; readonly logId: JsonValue | undefined },
): void {
  const [count, hash] = [said['readings'], said['readingsSha256']]
  rows.insert('ReadingBatch', {
    id: said['batch'],
    ...of,
    count,
    // The test of a lot has no last reading, and its entry says none.
    newestAt: of.logId === null ? null : said['last'],
    readings: count !== undefined && typeof hash === 'string' ? readingsAsCompared(count, hash) : undefined,
    sha256: said['file'],
    addedById: actorId,
    at,
  })
  rows.nameFile(said['file'], said['size'], said['mediaType'])
}
