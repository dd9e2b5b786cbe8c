import writeXlsxFile, { type Cell } from 'write-excel-file/node'
import type { ExportCell, ExportColumn, ExportTable } from '@/lib/exports/tables/export-table'
import { headingAtWorks } from '@/lib/exports/tables/heading-at-works'
import { instantOf as midnightOf } from '@/shared/quantity/calendar'
import { isDate } from '@/shared/quantity/is-date'
import type { Works } from '@/shared/quantity/works'
import { zoneOffsetMs } from '@/shared/quantity/works-clock'

/** The whole workbook is made in memory; a log with more readings leaves as CSV, piece by piece. */
export const LARGEST_WORKBOOK_ROWS = 100_000
/** What a cell of the format holds at most (ECMA-376, from memory). */
const LONGEST_TEXT = 32_767
/** The format counts days from 1900 and takes that year for a leap year: before March 1900 its days are not ours. */
const FIRST_SOUND_DAY = '1900-03-01'

/**
 * A table as an XLSX workbook: numbers and days are cells of that type, times are shown by the works' clock, and text
 * is text, which no spreadsheet takes for a formula.
 */
export function tableAsXlsx(table: ExportTable, works: Works): Promise<Buffer> {
  const heading = table.columns.map((column): Cell => ({
    value: headingAtWorks(column, works),
    type: String,
    fontWeight: 'bold',
  }))
  const rows = [...table.rows()].map((cells) =>
    cells.map((cell, at) => sheetCell(cell, table.columns[at]!.kind, works)),
  )
  return writeXlsxFile([heading, ...rows], { stickyRowsCount: 1 }).toBuffer()
}

function sheetCell(cell: ExportCell, kind: ExportColumn<never>['kind'], { timeZone }: Works): Cell {
  if (cell === undefined || cell === null || cell === '') return null
  if (kind === 'instant') {
    const instant = new Date(cell).getTime()
    return {
      value: new Date(instant + zoneOffsetMs(instant, timeZone)),
      type: Date,
      format: 'yyyy-mm-dd hh:mm:ss',
    }
  }
  if (kind === 'date' && typeof cell === 'string' && isDate(cell) && cell >= FIRST_SOUND_DAY)
    return { value: new Date(midnightOf(cell)), type: Date, format: 'yyyy-mm-dd' }
  return typeof cell === 'number'
    ? { value: cell, type: Number }
    : { value: cell.slice(0, LONGEST_TEXT), type: String }
}
