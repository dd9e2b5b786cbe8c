import { createHash } from 'node:crypto'
import { chmod, mkdtemp, readdir, rm, stat, utimes, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { buffer } from 'node:stream/consumers'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { contentPath, passingFolder } from '@/lib/evidence/evidence-paths'
import { EvidenceDamaged, openEvidenceStore, type EvidenceStore } from '@/lib/evidence/store'
import { Refused } from '@/shared/refused'
import { png } from './sample-files'

let store: EvidenceStore
beforeEach(async () => {
  store = await openEvidenceStore(await mkdtemp(join(tmpdir(), 'evidence-')))
})
afterEach(() => rm(store.folder, { recursive: true }))

const pieces = (content: Buffer, size = 7): Readable =>
  Readable.from(
    (function* () {
      for (let at = 0; at < content.length; at += size) yield content.subarray(at, at + size)
    })(),
  )
const hashOf = (content: Buffer): string => createHash('sha256').update(content).digest('hex')
const unfinished = (): Promise<string[]> => readdir(passingFolder(store.folder))

test('content goes in by pieces and comes out as it was, under its hash', async () => {
  const put = await store.put(pieces(png), { fileName: 'section.png' })
  expect(put).toEqual({ sha256: hashOf(png), size: png.length, mediaType: 'image/png' })
  expect(await store.has(put.sha256)).toBe(true)
  expect(await store.read(put.sha256)).toEqual(png)
  expect(await buffer(await store.open(put.sha256))).toEqual(png)
  expect(await unfinished()).toEqual([])
  // FIPS 180-4 example, from memory, recomputed: the store's name for "abc".
  const abc = await store.put(pieces(Buffer.from('abc')))
  expect(abc.sha256).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad')
  expect((await stat(join(store.folder, 'ba', '78', abc.sha256))).size).toBe(3)
})

test('a web stream is taken as well', async () => {
  const put = await store.put(new Blob(['some words']).stream() as unknown as AsyncIterable<Uint8Array>)
  expect(put).toMatchObject({ size: 10, mediaType: 'text/plain' })
})

test('the same content is kept once, also when sent at the same moment', async () => {
  const puts = await Promise.all(Array.from({ length: 8 }, () => store.put(pieces(png))))
  expect(new Set(puts.map(({ sha256 }) => sha256)).size).toBe(1)
  const path = contentPath(store.folder, hashOf(png))
  expect(await readdir(join(path, '..'))).toEqual([hashOf(png)])
  expect(await unfinished()).toEqual([])
})

test('sending content again marks it as wanted now', async () => {
  const { sha256 } = await store.put(pieces(png))
  const longAgo = new Date(0)
  await utimes(contentPath(store.folder, sha256), longAgo, longAgo)
  await store.put(pieces(png))
  expect((await stat(contentPath(store.folder, sha256))).mtimeMs).toBeGreaterThan(Date.UTC(2020, 0))
})

describe('what is refused leaves nothing behind', () => {
  test('too large: stops reading there', async () => {
    let given = 0
    const endless = Readable.from(
      (function* () {
        for (;;) {
          given += 1000
          yield Buffer.alloc(1000, 'x')
        }
      })(),
    )
    const put = store.put(endless, { maxBytes: 5_000, fileName: 'long.txt' })
    await expect(put).rejects.toThrow('"long.txt" is larger than 5000 bytes')
    await expect(put).rejects.toBeInstanceOf(Refused)
    expect(given).toBeLessThan(100_000)
    expect(endless.destroyed).toBe(true)
    expect(await unfinished()).toEqual([])
  })
  test('exactly the largest size is kept', async () => {
    expect((await store.put(pieces(Buffer.alloc(5_000, 'x')), { maxBytes: 5_000 })).size).toBe(5_000)
  })
  test('the usual limit is named in MiB', async () => {
    const much = Readable.from(
      (function* () {
        for (let i = 0; i < 51; i++) yield Buffer.alloc(1024 * 1024, 'x')
      })(),
    )
    await expect(store.put(much)).rejects.toThrow('larger than 50 MiB')
  })
  test('empty', async () => {
    await expect(store.put(Readable.from([]))).rejects.toThrow('The file is empty.')
    expect(await unfinished()).toEqual([])
  })
  test('named otherwise than its content', async () => {
    await expect(store.put(pieces(png), { fileName: 'report.pdf' })).rejects.toThrow(/PDF.*PNG/)
    expect(await unfinished()).toEqual([])
    expect(await store.has(hashOf(png))).toBe(false)
  })
  test('a sender that breaks off', async () => {
    const broken = Readable.from(
      (function* () {
        yield Buffer.from('half of')
        throw new Error('connection lost')
      })(),
    )
    await expect(store.put(broken)).rejects.toThrow('connection lost')
    expect(await unfinished()).toEqual([])
  })
  test('a full disk is told as such', async () => {
    const full = Readable.from(
      (function* () {
        yield Buffer.from('x')
        throw Object.assign(new Error('ENOSPC: no space left on device, write'), { code: 'ENOSPC' })
      })(),
    )
    await expect(store.put(full)).rejects.toThrow('The disk of the server is full')
    expect(await unfinished()).toEqual([])
  })
})

describe('what is not there, or not as it was', () => {
  test('content not held', async () => {
    const other = hashOf(Buffer.from('other'))
    expect(await store.has(other)).toBe(false)
    await expect(store.read(other)).rejects.toBeInstanceOf(EvidenceDamaged)
    await expect(store.open(other)).rejects.toBeInstanceOf(EvidenceDamaged)
  })
  test('content altered on the disk is never served as whole', async () => {
    const { sha256 } = await store.put(pieces(Buffer.from('0.823 g/ml')))
    const path = contentPath(store.folder, sha256)
    await chmod(path, 0o640)
    await writeFile(path, '0.832 g/ml')
    await expect(store.read(sha256)).rejects.toThrow('they were altered')
    await expect(store.open(sha256).then(buffer)).rejects.toThrow('they were altered')
  })
  test('content cut short on the disk is replaced when it is sent again', async () => {
    const { sha256 } = await store.put(pieces(png))
    const path = contentPath(store.folder, sha256)
    await chmod(path, 0o640)
    await writeFile(path, png.subarray(0, 10))
    await store.put(pieces(png))
    expect(await store.read(sha256)).toEqual(png)
  })
  test.each(['', '../../etc/passwd', 'ab', 'A'.repeat(64), `${'a'.repeat(63)}/`, `${'a'.repeat(64)}\n`])(
    '%j is no hash, and no path is made of it',
    async (sha256) => {
      await expect(async () => store.has(sha256)).rejects.toThrow(RangeError)
      await expect(async () => store.read(sha256)).rejects.toThrow(RangeError)
      await expect(async () => store.open(sha256)).rejects.toThrow(RangeError)
    },
  )
})
