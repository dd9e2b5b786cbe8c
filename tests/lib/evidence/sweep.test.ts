import { mkdtemp, readdir, rename, rm, utimes, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { asidePath, contentPath, passingFolder } from '@/lib/evidence/evidence-paths'
import { openEvidenceStore, type EvidenceStore } from '@/lib/evidence/store'
import { sweepEvidence } from '@/lib/evidence/sweep'

const DAY_MS = 86_400_000
const NOW = Date.UTC(2026, 2, 10)
const settings = { olderThanMs: DAY_MS, now: NOW }

let store: EvidenceStore
beforeEach(async () => {
  store = await openEvidenceStore(await mkdtemp(join(tmpdir(), 'sweep-')))
})
afterEach(() => rm(store.folder, { recursive: true }))

async function putAged(text: string, ageMs: number): Promise<string> {
  const { sha256 } = await store.put(Readable.from([Buffer.from(text)]))
  await age(contentPath(store.folder, sha256), ageMs)
  return sha256
}
const age = (path: string, ageMs: number): Promise<void> => {
  const at = new Date(NOW - ageMs)
  return utimes(path, at, at)
}

test('only what is old and named nowhere goes', async () => {
  const named = await putAged('named', 9 * DAY_MS)
  const young = await putAged('young', DAY_MS - 1000)
  const old = await putAged('old', DAY_MS + 1000)
  const result = await sweepEvidence(store.folder, { ...settings, referenced: new Set([named]) })
  expect(result).toEqual({ removedFiles: 1, removedBytes: 3, removedUnfinished: 0 })
  expect(await Promise.all([named, young, old].map((sha256) => store.has(sha256)))).toEqual([
    true,
    true,
    false,
  ])
})

test('uploads that broke off go when they are old', async () => {
  for (const [name, ageMs] of [
    ['a.arriving', 2 * DAY_MS],
    ['b.arriving', 1000],
  ] as const) {
    const path = join(passingFolder(store.folder), name)
    await writeFile(path, 'x')
    await age(path, ageMs)
  }
  const result = await sweepEvidence(store.folder, { ...settings, referenced: new Set() })
  expect(result.removedUnfinished).toBe(1)
  expect(await readdir(passingFolder(store.folder))).toEqual(['b.arriving'])
})

test('what a killed sweep had put aside comes back, and stays when it is named', async () => {
  const named = await putAged('named', 9 * DAY_MS)
  await rename(contentPath(store.folder, named), asidePath(store.folder, named))
  expect(await store.has(named)).toBe(false)
  await sweepEvidence(store.folder, { ...settings, referenced: new Set([named]) })
  expect(await store.read(named)).toEqual(Buffer.from('named'))
})

test('content sent again while a sweep runs is there afterwards', async () => {
  const contents = Array.from({ length: 40 }, (_, index) => `content ${index}`)
  const hashes = await Promise.all(contents.map((text) => putAged(text, 9 * DAY_MS)))
  const now = Date.now()
  const [swept] = await Promise.all([
    sweepEvidence(store.folder, { referenced: new Set(), olderThanMs: DAY_MS, now }),
    ...contents.map((text) => store.put(Readable.from([Buffer.from(text)]))),
  ])
  expect(await Promise.all(hashes.map((sha256) => store.has(sha256)))).toEqual(hashes.map(() => true))
  expect(swept.removedUnfinished).toBe(0)
})

test('strange names in the folder are left alone', async () => {
  await writeFile(join(store.folder, 'README'), 'mine')
  await sweepEvidence(store.folder, { ...settings, referenced: new Set() })
  expect(await readdir(store.folder)).toContain('README')
})
