import { inflateSync } from 'node:zlib'
import type { Bitmap } from './bitmap'

/**
 * A picture of eight bits a channel, red and perhaps more, as what is lighter than grey in red
 * (Portable Network Graphics specification, ISO/IEC 15948, clauses 5, 9 and 11).
 */
export function readPng(file: Buffer): Bitmap {
  const header = file.subarray(16)
  const [width, height] = [header.readUInt32BE(0), header.readUInt32BE(4)]
  const [depth, colour, interlace] = [header[8], header[9], header[12]]
  const channels = colour === 2 ? 3 : colour === 6 ? 4 : undefined
  if (depth !== 8 || interlace !== 0 || channels === undefined)
    throw new Error(`A picture of depth ${depth}, colour ${colour} is not read here.`)
  const data = inflateSync(Buffer.concat(chunks(file, 'IDAT')))
  const stride = width * channels
  const covered = new Uint8Array(width * height)
  let above = new Uint8Array(stride)
  for (let row = 0; row < height; row++) {
    const start = row * (stride + 1)
    const line = data.subarray(start + 1, start + 1 + stride)
    unfilter(data[start]!, line, above, channels)
    for (let column = 0; column < width; column++)
      covered[row * width + column] = line[column * channels]! > 127 ? 1 : 0
    above = line
  }
  return { width, height, covered }
}

function chunks(file: Buffer, wanted: string): Buffer[] {
  const found: Buffer[] = []
  for (let at = 8; at < file.length;) {
    const length = file.readUInt32BE(at)
    if (file.toString('latin1', at + 4, at + 8) === wanted) found.push(file.subarray(at + 8, at + 8 + length))
    at += length + 12
  }
  return found
}

function unfilter(filter: number, line: Uint8Array, above: Uint8Array, channels: number): void {
  if (filter === 0) return
  for (let at = 0; at < line.length; at++) {
    const left = at < channels ? 0 : line[at - channels]!
    const up = above[at]!
    if (filter === 1) line[at]! += left
    else if (filter === 2) line[at]! += up
    else if (filter === 3) line[at]! += (left + up) >> 1
    else line[at]! += nearestOf(left, up, at < channels ? 0 : above[at - channels]!)
  }
}

/** Paeth: of the three neighbours the one nearest to left + up − corner. */
function nearestOf(left: number, up: number, corner: number): number {
  const guess = left + up - corner
  const [a, b, c] = [Math.abs(guess - left), Math.abs(guess - up), Math.abs(guess - corner)]
  return a <= b && a <= c ? left : b <= c ? up : corner
}
