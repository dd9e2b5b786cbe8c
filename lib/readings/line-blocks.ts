const QUOTE = 0x22
const LINE_FEED = 0x0a
const CARRIAGE_RETURN = 0x0d

/** Bytes handed on in one go; small enough that the server answers others between two. */
const BLOCK_BYTES = 128 * 1024
/** No sensible reading is longer. Also ends the search for the end of a quotation. */
export const LONGEST_LINE_BYTES = 64 * 1024

/** Whole lines of the file, no quotation cut in two as far as quotes are set rightly. */
export type LineBlock = {
  readonly bytes: Buffer
  /** The number of the block's first line in the file, from 1. */
  readonly firstLine: number
  /** How far the file has been read, in bytes. */
  readonly bytesRead: number
} & (
  | { readonly is: 'lines' }
  /** A single line that is too long to be one; its bytes are cut. */
  | { readonly is: 'overlong line' }
)

/** Cuts a file, as it arrives, into blocks of whole lines. */
export async function* lineBlocks(source: Uint8Array | AsyncIterable<Uint8Array>): AsyncGenerator<LineBlock> {
  let rest: Buffer = Buffer.alloc(0)
  let firstLine = 1
  let bytesRead = 0
  let lineEnd = 0
  let isSkipping = false

  const block = (bytes: Buffer, is: LineBlock['is']): LineBlock => {
    const made = { bytes, firstLine, bytesRead, is }
    firstLine += is === 'lines' ? countOf(bytes, lineEnd) : 1
    return made
  }

  for await (const piece of pieces(source)) {
    bytesRead += piece.length
    let bytes = rest.length === 0 ? piece : Buffer.concat([rest, piece])
    lineEnd ||= lineEndOf(bytes)
    if (isSkipping) {
      const end = lineEnd === 0 ? -1 : bytes.indexOf(lineEnd)
      if (end < 0) continue
      bytes = bytes.subarray(end + 1)
      isSkipping = false
    }
    const end = endOfLastRecord(bytes, lineEnd)
    if (end > 0) yield block(bytes.subarray(0, end), 'lines')
    rest = bytes.subarray(end)
    if (rest.length <= LONGEST_LINE_BYTES) continue

    // Either a quotation that does not end, which the reader of the lines will report, or one long line.
    const lastEnd = lineEnd === 0 ? 0 : rest.lastIndexOf(lineEnd) + 1
    if (lastEnd > 0) yield block(rest.subarray(0, lastEnd), 'lines')
    rest = rest.subarray(lastEnd)
    if (rest.length <= LONGEST_LINE_BYTES) continue
    yield block(rest.subarray(0, LONGEST_LINE_BYTES), 'overlong line')
    rest = Buffer.alloc(0)
    isSkipping = true
  }
  if (rest.length > 0) yield block(rest, 'lines')
}

async function* pieces(source: Uint8Array | AsyncIterable<Uint8Array>): AsyncGenerator<Buffer> {
  if (!(source instanceof Uint8Array)) {
    for await (const chunk of source) yield* cut(chunk)
    return
  }
  yield* cut(source)
}

function* cut(bytes: Uint8Array): Generator<Buffer> {
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  for (let at = 0; at < buffer.length; at += BLOCK_BYTES) yield buffer.subarray(at, at + BLOCK_BYTES)
}

/** Line feed, unless the file begins with lines that end in carriage returns alone; 0 as long as neither came. */
function lineEndOf(bytes: Buffer): number {
  if (bytes.includes(LINE_FEED)) return LINE_FEED
  return bytes.subarray(0, -1).includes(CARRIAGE_RETURN) ? CARRIAGE_RETURN : 0
}

/** Where the last line ends that lies outside quotation marks; 0 when none does. */
function endOfLastRecord(bytes: Buffer, lineEnd: number): number {
  if (lineEnd === 0) return 0
  if (!bytes.includes(QUOTE)) return bytes.lastIndexOf(lineEnd) + 1
  let end = 0
  let isQuoted = false
  for (let at = 0; at < bytes.length;) {
    const quote = bytes.indexOf(QUOTE, at)
    const stop = quote < 0 ? bytes.length : quote
    if (!isQuoted) {
      const inside = bytes.subarray(at, stop).lastIndexOf(lineEnd)
      if (inside >= 0) end = at + inside + 1
    }
    isQuoted = !isQuoted
    at = stop + 1
  }
  return end
}

function countOf(bytes: Buffer, byte: number): number {
  let count = 0
  for (let at = bytes.indexOf(byte); at >= 0; at = bytes.indexOf(byte, at + 1)) count += 1
  return count
}
