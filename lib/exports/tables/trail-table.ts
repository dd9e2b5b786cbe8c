import { eachAtItsMoment } from '@/lib/db/row-reader'
import { exportTable, instantOf, numberOf, textOf, type ExportTable } from '@/lib/exports/tables/export-table'
import { LARGEST_WORKBOOK_ROWS } from '@/lib/exports/tables/table-as-xlsx'
import { tableResponse } from '@/lib/exports/tables/table-response'
import { fileResponse } from '@/lib/exports/text-response'
import { trailCsv } from '@/lib/exports/trail-csv'
import { trailEntries } from '@/lib/trail/stored-trail'
import { entryLabel } from '@/shared/commands/entry-told'
import type { TrailEntry } from '@/shared/trail/entry'

/** A trail by its id, and what its rows call it. */
interface NamedTrail {
  readonly id: string
  readonly code: string
}

/** Trails as a file to save: CSV, piece by piece, or a workbook where `as` is xlsx. */
export async function trailsResponse(
  trails: readonly NamedTrail[],
  name: string,
  as: string | null,
): Promise<Response> {
  if (as === 'xlsx') return tableResponse(await trailsTable(trails, name), as)
  return fileResponse(trailCsv(trails), `${name}.csv`, 'text/csv')
}

/** The entries of trails as a table; of more than a workbook holds as many as show that it is. */
async function trailsTable(trails: readonly NamedTrail[], name: string): Promise<ExportTable> {
  const held: { readonly code: string; readonly entry: TrailEntry }[] = []
  for (const { id, code } of trails) {
    for await (const entries of trailEntries(eachAtItsMoment, id)) {
      held.push(...entries.map((entry) => ({ code, entry })))
      if (held.length > LARGEST_WORKBOOK_ROWS) break
    }
    if (held.length > LARGEST_WORKBOOK_ROWS) break
  }
  return exportTable<(typeof held)[number]>(
    name,
    [
      textOf('Trail', ({ code }) => code),
      numberOf('Entry', ({ entry }) => entry.seq),
      instantOf('At', ({ entry }) => entry.at),
      textOf('By', ({ entry }) => entry.actorName),
      textOf('What was done', ({ entry }) => entryLabel(entry.command)),
      textOf('As recorded', ({ entry }) => entry.payload),
      textOf('Hash', ({ entry }) => entry.hash),
    ],
    held,
  )
}
