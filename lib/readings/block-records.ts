import { isUtf8 } from 'node:buffer'
import { CsvError, parse } from 'csv-parse/sync'
import type { Delimiter } from './delimiter'
import type { ImportErrors } from './import-errors'
import type { LineBlock } from './line-blocks'

const QUOTE = 0x22
const LINE_FEED = 0x0a
const CARRIAGE_RETURN = 0x0d

/** Cells of one record and the line on which it begins. */
export type RecordReader = (cells: readonly string[], line: number) => void

/** A file in which quotations go wrong this often is not read to its end. */
const MAX_MISQUOTED_LINES = 100

/**
 * Why a block cannot be text in UTF-8, in words; undefined when it can.
 * `line` is where it shows first.
 */
export function encodingFault({
  bytes,
  firstLine,
}: LineBlock): { line: number; message: string } | undefined {
  const nul = bytes.indexOf(0)
  if (nul >= 0) {
    const message =
      'holds a NUL byte, so the file is no CSV text in UTF-8 (perhaps UTF-16, or no text at all).'
    return { line: firstLine + linesBefore(bytes, nul), message }
  }
  if (isUtf8(bytes)) return undefined
  const at = firstByteOutsideUtf8(bytes)
  const byte = bytes[at] ?? 0
  const message =
    `has the byte ${byte.toString(16).toUpperCase()} (hexadecimal), which is not UTF-8. ` +
    `The file seems to be in Latin-1 (Windows-1252), where it means "${String.fromCharCode(byte)}". Save it as UTF-8.`
  return { line: firstLine + linesBefore(bytes, at), message }
}

/**
 * Reads the records of a block. A line whose quotation marks are set wrongly becomes an error
 * and reading goes on behind it. False when there are so many that it is not worth going on.
 */
export function readRecords(
  { bytes, firstLine }: LineBlock,
  delimiter: Delimiter,
  errors: ImportErrors,
  misquoted: { lines: number },
  read: RecordReader,
): boolean {
  let rest = bytes
  let line = firstLine
  while (rest.length > 0) {
    const fault = tryRecords(rest, delimiter, line, read)
    if (!fault) return true
    const { from, to } = lineAround(rest, fault.line - line)
    tryRecords(rest.subarray(0, from), delimiter, line, read)
    errors.add(fault.line, fault.message)
    misquoted.lines += 1
    if (misquoted.lines >= MAX_MISQUOTED_LINES) {
      errors.add(fault.line, `reading stopped here: ${misquoted.lines} lines have misplaced quotation marks.`)
      return false
    }
    rest = rest.subarray(to)
    line = fault.line + 1
  }
  return true
}

/** Hands on all records, or none and says where quotation goes wrong. */
function tryRecords(
  bytes: Buffer,
  delimiter: Delimiter,
  firstLine: number,
  read: RecordReader,
): { line: number; message: string } | undefined {
  let records: string[][]
  try {
    records = parse(bytes, {
      delimiter,
      record_delimiter: lineEndOf(bytes) === LINE_FEED ? ['\r\n', '\n'] : ['\r'],
      relax_column_count: true,
    })
  } catch (error) {
    if (!(error instanceof CsvError)) throw error
    const plain = withPlainLineEnds(bytes)
    return plain === bytes
      ? quotationFault(error, bytes, firstLine)
      : tryRecords(plain, delimiter, firstLine, read)
  }
  if (!bytes.includes(QUOTE)) {
    for (let index = 0; index < records.length; index++) read(records[index]!, firstLine + index)
    return undefined
  }
  const lineEnd = String.fromCharCode(lineEndOf(bytes))
  let line = firstLine
  for (const cells of records) {
    read(cells, line)
    line += cells.reduce((count, cell) => count + cell.split(lineEnd).length - 1, 1)
  }
  return undefined
}

/** Inside a quotation the CSV reader counts a carriage return with its line feed as two lines, and would name a wrong one. */
const withPlainLineEnds = (bytes: Buffer): Buffer =>
  bytes.includes('\r\n') ? Buffer.from(bytes.toString('latin1').replaceAll('\r\n', '\n'), 'latin1') : bytes

function quotationFault(
  error: CsvError,
  bytes: Buffer,
  firstLine: number,
): { line: number; message: string } {
  const before = Number(error['lines'] ?? 1) - 1
  // The reader notices where a quotation cannot end; the person must mend where it began.
  const opened =
    error.code === 'CSV_QUOTE_NOT_CLOSED'
      ? openedIn(bytes)
      : openedIn(bytes.subarray(0, lineAround(bytes, before).from))
  return opened === undefined
    ? {
        line: firstLine + before,
        message:
          'a quotation mark (") stands inside a value. Put the value in quotation marks and double those that belong to it.',
      }
    : {
        line: firstLine + linesBefore(bytes, opened),
        message:
          'a quotation mark (") opens here and is not closed. Close it, or double it if it belongs to the text.',
      }
}

/** Where the quotation begins that does not end in these bytes: marks open and close in turn. */
function openedIn(bytes: Buffer): number | undefined {
  let opened: number | undefined
  for (let at = bytes.indexOf(QUOTE); at >= 0; at = bytes.indexOf(QUOTE, at + 1)) {
    opened = opened === undefined ? at : undefined
  }
  return opened
}

/** First and behind-last byte of the line that has so many lines before it. */
function lineAround(bytes: Buffer, before: number): { from: number; to: number } {
  const lineEnd = lineEndOf(bytes)
  let from = 0
  for (let count = 0; count < before; count++) from = behindLine(bytes, from, lineEnd)
  return { from, to: behindLine(bytes, from, lineEnd) }
}

function linesBefore(bytes: Buffer, position: number): number {
  const lineEnd = lineEndOf(bytes)
  let count = 0
  for (let at = bytes.indexOf(lineEnd); at >= 0 && at < position; at = bytes.indexOf(lineEnd, at + 1))
    count += 1
  return count
}

function behindLine(bytes: Buffer, from: number, lineEnd: number): number {
  const end = bytes.indexOf(lineEnd, from)
  return end < 0 ? bytes.length : end + 1
}

/** Lines end in a line feed, perhaps with a carriage return before it; or in carriage returns alone. */
const lineEndOf = (bytes: Buffer): number => (bytes.includes(LINE_FEED) ? LINE_FEED : CARRIAGE_RETURN)

/** The byte that is at fault is the one that cannot follow, or the one before it that wanted to be followed. */
function firstByteOutsideUtf8(bytes: Buffer): number {
  const lineEnd = lineEndOf(bytes)
  let from = 0
  while (from < bytes.length && isUtf8(bytes.subarray(from, behindLine(bytes, from, lineEnd)))) {
    from = behindLine(bytes, from, lineEnd)
  }
  const decoder = new TextDecoder('utf-8', { fatal: true })
  for (let at = from; at < bytes.length; at++) {
    try {
      decoder.decode(bytes.subarray(at, at + 1), { stream: true })
    } catch {
      return bytes[at]! < 0x80 && at > from ? at - 1 : at
    }
  }
  return bytes.length - 1
}
