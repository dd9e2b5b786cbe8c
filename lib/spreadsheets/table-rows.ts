import { encodingFault, readRecords } from '@/lib/readings/block-records'
import { detectForm } from '@/lib/readings/file-form'
import { ImportErrors } from '@/lib/readings/import-errors'
import type { DecimalSign } from '@/shared/quantity/notation'
import type { Works } from '@/shared/quantity/works'
import { Refused } from '@/shared/refused'
import { isArchive, workbookAsText } from './workbook-in-thread'

/** The rows of a table that is to be filled in, as text, with the decimal sign its numbers have. */
export interface TableRows {
  readonly decimal: DecimalSign
  /** The first as it stands, whether it holds headings or not; the nth is the nth line or row of the sheet. */
  readonly rows: readonly (readonly string[])[]
}

export const MOST_ROWS = 5000
const ENOUGH_TO_SEE = 16 * 1024
const BYTE_ORDER_MARK = Buffer.from([0xef, 0xbb, 0xbf])

/** Reads what was pasted from a spreadsheet, a CSV file or a workbook. Errors: Refused, with line where there is one. */
export async function tableRows(given: Buffer, works: Works): Promise<TableRows> {
  if (isArchive(given)) return recordsOf(await workbookAsText(given, '.'), { delimiter: '\t', decimal: '.' })
  const bytes = given.subarray(0, 3).equals(BYTE_ORDER_MARK) ? given.subarray(3) : given
  const fault = encodingFault({ is: 'lines', bytes, firstLine: 1, bytesRead: bytes.length })
  if (fault) throw new Refused(`Line ${fault.line} ${fault.message}`)
  return recordsOf(bytes, detectForm(bytes.subarray(0, ENOUGH_TO_SEE).toString('utf8'), works))
}

function recordsOf(
  bytes: Buffer,
  { delimiter, decimal }: Pick<ReturnType<typeof detectForm>, 'delimiter' | 'decimal'>,
): TableRows {
  const rows: string[][] = []
  const errors = new ImportErrors()
  const block = { is: 'lines', bytes, firstLine: 1, bytesRead: bytes.length } as const
  readRecords(block, delimiter, errors, { lines: 0 }, (cells, line) => {
    if (line > MOST_ROWS) throw new Refused(`More than ${MOST_ROWS} rows. Take them in several goes.`)
    // A record over several lines leaves those behind its first empty.
    while (rows.length < line - 1) rows.push([])
    rows.push(cells.map((cell) => cell.trim()))
  })
  const [first] = errors.listed
  if (first) throw new Refused(first.message)
  return { decimal, rows }
}
