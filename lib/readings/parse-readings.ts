import { setImmediate as othersFirst } from 'node:timers/promises'
import type { Readings } from '@/shared/records/readings'
import { encodingFault, readRecords } from './block-records'
import type { ColumnMapping } from './column-mapping'
import { NEUTRAL_WORKS, type Works } from '@/shared/quantity/works'
import { detectForm, type FileForm } from './file-form'
import { ImportErrors, type ImportError } from './import-errors'
import { lineBlocks, LONGEST_LINE_BYTES, type LineBlock } from './line-blocks'
import type { ReadingField } from './reading-field'
import { ReadingTable } from './reading-table'

export type ImportProgress = {
  readonly bytesRead: number
  readonly rows: number
  readonly errorCount: number
}

export type ImportOptions = {
  /** Which heading each field is read from; without it, the suggested ones. */
  readonly mapping?: ColumnMapping
  /** How the file is read where it does not show that itself. */
  readonly works?: Works
  /** How it is to be read, instead of as it shows. */
  readonly form?: FileForm
  /** Called now and then, and once at the end. */
  readonly onProgress?: (progress: ImportProgress) => void
  readonly maxRows?: number
  /** Ends the import with the signal's reason. */
  readonly signal?: AbortSignal
}

/** All readings, or every reason why there are none. */
export type ReadingsImport =
  | {
      readonly ok: true
      /** Column by column, by field name; instants in epoch milliseconds, an empty cell null. */
      readonly readings: Readings
      readonly form: FileForm
      readonly mapping: ColumnMapping
      /** Headings that no field was read from. */
      readonly ignoredHeadings: readonly string[]
    }
  | {
      readonly ok: false
      /** The first 200, lowest line first. */
      readonly errors: readonly ImportError[]
      readonly errorCount: number
    }

const MAX_ROWS = 1_000_000

/**
 * Reads a CSV file of readings (RFC 4180, also with semicolons or tabs, and a byte order mark),
 * all or nothing. The first line holds the headings. Numbers, dates
 * and times without a zone are read in the file's form. Lets others run between blocks of 128 KiB.
 */
export async function parseReadings(
  source: Uint8Array | AsyncIterable<Uint8Array>,
  fields: readonly ReadingField[],
  { mapping, works = NEUTRAL_WORKS, form, onProgress, maxRows = MAX_ROWS, signal }: ImportOptions = {},
): Promise<ReadingsImport> {
  const errors = new ImportErrors()
  const misquoted = { lines: 0 }
  let table: ReadingTable | undefined
  let bytesRead = 0

  for await (const block of lineBlocks(source)) {
    signal?.throwIfAborted()
    bytesRead = block.bytesRead
    const text = block.firstLine === 1 ? withoutByteOrderMark(block) : block
    if (!isReadable(text, errors)) break
    if (text.is === 'overlong line') {
      errors.add(
        text.firstLine,
        `longer than ${LONGEST_LINE_BYTES / 1024} KiB, which no reading is. Is this a CSV file?`,
      )
      if (!table) break
      continue
    }
    table ??= new ReadingTable(form ?? detectForm(headOf(text), works), fields, mapping, errors, maxRows)
    const goOn = readRecords(text, table.form.delimiter, errors, misquoted, table.take)
    if (!goOn || table.isHopeless) break
    onProgress?.({ bytesRead, rows: table.rows, errorCount: errors.count })
    await othersFirst()
  }

  onProgress?.({ bytesRead, rows: table?.rows ?? 0, errorCount: errors.count })
  if (!table?.heading && errors.count === 0)
    errors.add(1, 'the file is empty; a line of headings was expected.')
  if (table?.heading && table.rows === 0 && errors.count === 0)
    errors.add(1, 'there are headings, but no readings below them.')
  if (errors.count > 0 || !table?.heading)
    return { ok: false, errors: inOrder(errors.listed), errorCount: errors.count }
  const { heading } = table
  return {
    ok: true,
    readings: { count: table.rows, columns: table.columns() },
    form: table.form,
    mapping: heading.mapping,
    ignoredHeadings: heading.ignored,
  }
}

function isReadable(block: LineBlock, errors: ImportErrors): boolean {
  if (block.firstLine === 1 && startsAsUtf16(block.bytes)) {
    errors.add(1, 'the file is in UTF-16. Save it as UTF-8.')
    return false
  }
  // The end of a line that was cut may be half a character.
  const fault = block.is === 'lines' ? encodingFault(block) : undefined
  if (fault) errors.add(fault.line, fault.message)
  return !fault
}

const startsAsUtf16 = (bytes: Buffer): boolean =>
  (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)

function withoutByteOrderMark(block: LineBlock): LineBlock {
  const { bytes } = block
  const hasMark = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf
  return hasMark ? { ...block, bytes: bytes.subarray(3) } : block
}

const headOf = ({ bytes }: LineBlock): string => bytes.subarray(0, 16 * 1024).toString('utf8')

const inOrder = (errors: readonly ImportError[]): ImportError[] =>
  [...errors].sort((one, other) => one.line - other.line)
