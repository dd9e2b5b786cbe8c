import { encodingFault, readRecords } from './block-records'
import { suggestMapping, type ColumnMapping } from './column-mapping'
import type { Works } from '@/shared/quantity/works'
import { detectForm, type FileForm } from './file-form'
import { ImportErrors } from './import-errors'
import type { ReadingField } from './reading-field'

const SAMPLE_ROWS = 5

/** What the start of a file shows, for a person to say which column is which. */
export type ReadingsPreview = {
  readonly form: FileForm
  readonly headings: readonly string[]
  readonly sampleRows: readonly (readonly string[])[]
  readonly suggested: ColumnMapping
}

/**
 * Looks at the first bytes of a file (64 KiB are plenty). Undefined when they cannot be read
 * as CSV in UTF-8; importing the file says why.
 */
export function previewReadings(
  start: Uint8Array,
  fields: readonly ReadingField[],
  works: Works,
  chosen?: FileForm,
): ReadingsPreview | undefined {
  const lines = wholeLines(Buffer.from(start.buffer, start.byteOffset, start.byteLength))
  const block = { is: 'lines', bytes: lines, firstLine: 1, bytesRead: lines.length } as const
  if (encodingFault(block)) return undefined
  const form = chosen ?? detectForm(lines.toString('utf8'), works)
  const rows: (readonly string[])[] = []
  readRecords(block, form.delimiter, new ImportErrors(), { lines: 0 }, (cells) => rows.push(cells))
  const [heading, ...rest] = rows.filter((cells) => cells.some((cell) => cell.trim() !== ''))
  if (!heading) return undefined
  const headings = heading.map((cell) => cell.trim())
  return {
    form,
    headings,
    sampleRows: rest.slice(0, SAMPLE_ROWS),
    suggested: suggestMapping(headings, fields),
  }
}

/** Without a byte order mark, and without a last line that may be cut. */
function wholeLines(start: Buffer): Buffer {
  const bytes = start.subarray(0, 3).equals(Buffer.from([0xef, 0xbb, 0xbf])) ? start.subarray(3) : start
  const end = Math.max(bytes.lastIndexOf(0x0a), bytes.lastIndexOf(0x0d)) + 1
  return end > 0 ? bytes.subarray(0, end) : bytes
}
