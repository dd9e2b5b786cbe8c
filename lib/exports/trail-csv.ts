import { eachAtItsMoment } from '@/lib/db/row-reader'
import { trailEntries } from '@/lib/trail/stored-trail'
import { entryLabel } from '@/shared/commands/entry-told'
import { csvLine } from '@/shared/trail/csv-cell'

/** Trails as one table for a spreadsheet, piece by piece; for proof, take the bundle. */
export async function* trailCsv(trails: readonly { id: string; code: string }[]): AsyncGenerator<string> {
  yield csvLine(['trail', 'entry', 'at', 'by', 'done', 'recorded', 'hash'])
  for (const { id, code } of trails) {
    for await (const entries of trailEntries(eachAtItsMoment, id)) {
      yield entries
        .map(({ seq, at, actorName, command, payload, hash }) =>
          csvLine([code, seq, at, actorName, entryLabel(command), payload, hash]),
        )
        .join('')
    }
  }
}
