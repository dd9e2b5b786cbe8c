import type { ExportCell, ExportColumn, ExportTable } from '@/lib/exports/tables/export-table'
import { headingAtWorks } from '@/lib/exports/tables/heading-at-works'
import { csvLineWith } from '@/shared/trail/csv-cell'
import type { Works } from '@/shared/quantity/works'
import { wallTimeOf } from '@/shared/quantity/works-clock'

const ROWS_A_PIECE = 500

/** A table as CSV, piece by piece, in the works' notation: times by its clock, dates by ISO 8601. */
export async function* tableAsCsv(table: ExportTable, works: Works): AsyncGenerator<string> {
  const { decimal } = works.notation
  let piece = csvLineWith(
    table.columns.map((column) => headingAtWorks(column, works)),
    decimal,
  )
  let held = 0
  for (const cells of table.rows()) {
    piece += csvLineWith(
      cells.map((cell, at) => cellText(cell, table.columns[at]!.kind, works)),
      decimal,
    )
    if (++held % ROWS_A_PIECE === 0) {
      yield piece
      piece = ''
    }
  }
  yield piece
}

function cellText(cell: ExportCell, kind: ExportColumn<never>['kind'], { timeZone }: Works): ExportCell {
  if (kind !== 'instant' || cell === undefined || cell === null || cell === '') return cell
  return wallTimeOf(new Date(cell).getTime(), timeZone).replace('T', ' ')
}
