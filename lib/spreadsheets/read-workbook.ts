import { unzipSync, type UnzipFileInfo } from 'fflate'
import { readSheet } from 'read-excel-file/node'
import { Refused } from '@/shared/refused'
import type { WorkbookCell } from './workbook-cell'

/** What a workbook may hold; beyond it nothing is read. */
export const WORKBOOK_LIMITS = {
  parts: 1000,
  unpackedBytes: 100 * 1024 * 1024,
  cells: 4_000_000,
} as const

const MS_PER_DAY = 86_400_000
/** Digits that a spreadsheet itself keeps; the rest is the rounding of binary fractions. */
const DIGITS = 15
/** Day 0 of the format: a time of day without a date lies on it, or the day after where 1904 is counted from. */
const NO_DATE_BEFORE = Date.UTC(1900, 0, 1)

/**
 * The rows of a workbook's first sheet, from its first row on, so that the nth is the nth line of the sheet.
 * Errors: Refused, where it is no workbook or holds too much.
 */
export async function readWorkbook(
  workbook: Uint8Array,
  limits: Record<keyof typeof WORKBOOK_LIMITS, number> = WORKBOOK_LIMITS,
): Promise<WorkbookCell[][]> {
  refuseTooMuch(workbook, limits)
  const sheet = await readSheet(Buffer.from(workbook)).catch(() => {
    throw new Refused('The file cannot be read as an XLSX workbook. Save it again as XLSX or CSV.')
  })
  let cells = 0
  return sheet.map((row) => {
    cells += row.length
    if (cells > limits.cells) throw new Refused(`The sheet has more than ${limits.cells} cells.`)
    return row.map(cellOf)
  })
}

function cellOf(cell: unknown): WorkbookCell {
  if (cell === null || cell === undefined) return ''
  if (typeof cell === 'number') return Number(cell.toPrecision(DIGITS))
  if (cell instanceof Date) return timeText(cell.getTime())
  if (typeof cell === 'boolean') return cell ? 'yes' : 'no'
  return String(cell).replace(/\s+/g, ' ').trim()
}

/**
 * What the cell shows: a date, a time of day, or both; the format knows no zone. It counts in fractions of a day, of
 * which the reader leaves the millisecond below: times are told to the hundredth of a second.
 */
function timeText(shownMs: number): string {
  const rounded = Math.round((shownMs + 1) / 10) * 10
  const text = new Date(rounded).toISOString().replace(/\.000Z$|0?Z$/, '')
  if (rounded < NO_DATE_BEFORE) return text.slice(11)
  return ((rounded % MS_PER_DAY) + MS_PER_DAY) % MS_PER_DAY === 0 ? text.slice(0, 10) : text.replace('T', ' ')
}

/** Looks at what the archive says that it holds before any of it is unpacked, then unpacks no more than that. */
function refuseTooMuch(workbook: Uint8Array, limits: Record<keyof typeof WORKBOOK_LIMITS, number>): void {
  let [parts, bytes] = [0, 0]
  const look = ({ originalSize }: UnzipFileInfo): boolean => {
    parts++
    bytes += originalSize
    return false
  }
  try {
    unzipSync(workbook, { filter: look })
  } catch {
    throw new Refused('The file is no XLSX workbook.')
  }
  if (parts > limits.parts) throw new Refused(`The workbook has more than ${limits.parts} parts.`)
  if (bytes > limits.unpackedBytes)
    throw new Refused(`The workbook unpacks to more than ${limits.unpackedBytes / 1024 / 1024} MiB.`)
}
