import { strToU8, zipSync } from 'fflate'
import { expect, test } from 'vitest'
import { unpack } from '@/lib/board-files/unpack'
import { Refused } from '@/shared/refused'

const limits = { files: 3, fileBytes: 1000, totalBytes: 1500 }

test('takes the files of all folders by their names, and leaves what systems pack beside them', () => {
  const archive = zipSync({
    'out/top.gbr': strToU8('top'),
    '__MACOSX/out/._top.gbr': strToU8('x'),
    'out/.DS_Store': strToU8('x'),
    'board.drl': strToU8('drill'),
  })
  expect(unpack(archive).map(({ name }) => name)).toEqual(['top.gbr', 'board.drl'])
})

test.each([
  [
    'too many files',
    zipSync({ a: strToU8('a'), b: strToU8('b'), c: strToU8('c'), d: strToU8('d') }),
    /more than 3 files/,
  ],
  ['a file too large', zipSync({ a: new Uint8Array(2000) }), /a unpacks to more than/],
  [
    'too much in all',
    zipSync({ a: new Uint8Array(900), b: new Uint8Array(900) }),
    /archive unpacks to more than/,
  ],
  ['no archive', strToU8('PK but not really'), /no sound zip archive/],
  ['half an archive', zipSync({ a: new Uint8Array(900) }).subarray(0, 60), /no sound zip archive/],
])('refuses %s', (_, archive, sentence) => {
  expect(() => unpack(archive, limits)).toThrow(Refused)
  expect(() => unpack(archive, limits)).toThrow(sentence)
})

test('a header that says less than the file unpacks to gets no more memory than it says', () => {
  const archive = zipSync({ a: new Uint8Array(100_000) })
  // The uncompressed size stands at the same place in every central directory entry (PKWARE APPNOTE 4.3.12).
  const view = new DataView(archive.buffer, archive.byteOffset, archive.byteLength)
  const central = archive.findIndex(
    (byte, at) => byte === 0x50 && archive[at + 1] === 0x4b && archive[at + 2] === 1 && archive[at + 3] === 2,
  )
  view.setUint32(central + 24, 10, true)
  const unpacked = (): number => unpack(archive, limits)[0]!.bytes.length
  let length = 0
  try {
    length = unpacked()
  } catch (error) {
    expect(error).toBeInstanceOf(Refused)
  }
  expect(length).toBeLessThanOrEqual(10)
})
