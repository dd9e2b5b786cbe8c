import { eachAtItsMoment } from '@/lib/db/row-reader'
import { exportTable, instantOf, numberOf, textOf, type ExportTable } from '@/lib/exports/tables/export-table'
import { LARGEST_WORKBOOK_ROWS } from '@/lib/exports/tables/table-as-xlsx'
import { trailEntries } from '@/lib/trail/stored-trail'
import type { TrailEntry } from '@/shared/trail/entry'

/** The entries of one trail as a table; of a trail too long for a workbook as many as show that it is. */
export async function trailTable(trailId: string, name: string): Promise<ExportTable> {
  const held: TrailEntry[] = []
  for await (const entries of trailEntries(eachAtItsMoment, trailId)) {
    held.push(...entries)
    if (held.length > LARGEST_WORKBOOK_ROWS) break
  }
  return exportTable<TrailEntry>(
    name,
    [
      numberOf('Entry', ({ seq }) => seq),
      instantOf('At', ({ at }) => at),
      textOf('By', ({ actorName }) => actorName),
      textOf('Command', ({ command }) => command),
      textOf('What', ({ payload }) => payload),
      textOf('Hash', ({ hash }) => hash),
    ],
    held,
  )
}
