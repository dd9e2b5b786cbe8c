import { randomUUID } from 'node:crypto'
import { utimes } from 'node:fs/promises'
import { Readable } from 'node:stream'
import { afterAll, beforeAll, expect, test, vi } from 'vitest'
import { database } from '@/lib/db/client'
import { contentPath } from '@/lib/evidence/evidence-paths'
import { installedStore } from '@/lib/evidence/installed-store'
import { registerFile } from '@/lib/evidence/register-file'
import { sweepDaily, sweepInstalled } from '@/lib/evidence/sweep-installed'
import { openWorld, type World } from '@/tests/commands/world'
import { freshInstallation, type FreshInstallation } from '@/tests/setup/installation'

const DAY_MS = 86_400_000

let db: FreshInstallation
let world: World
beforeAll(async () => {
  db = await freshInstallation()
  world = await openWorld()
})
afterAll(async () => {
  await db.drop()
})

/** A file sent so many days ago, in the store and in its register. */
async function sent(text: string, daysAgo: number): Promise<string> {
  const store = await installedStore()
  const content = await store.put(Readable.from([Buffer.from(text)]))
  const at = new Date(Date.now() - daysAgo * DAY_MS)
  await utimes(contentPath(store.folder, content.sha256), at, at)
  await registerFile(content, await sender(), at)
  return content.sha256
}

const sender = async () => ({
  personId: world.person.design,
  trailId: (await database().programme.findUniqueOrThrow({ where: { code: world.code } })).id,
})

const attach = (sha256: string) =>
  world.as('design', 'attach-evidence', {
    programme: world.code,
    item: 'laminate',
    kind: 'certificate',
    note: '',
    what: { sha256, fileName: 'certificate.txt' },
  })

const isHeld = async (sha256: string) => ({
  file: await (await installedStore()).has(sha256),
  row: (await database().storedFile.count({ where: { sha256 } })) === 1,
})

test('an upload that nothing names goes after a week, with its row; a named or a young one stays', async () => {
  const named = await sent(`named ${randomUUID()}`, 30)
  expect(await attach(named)).toMatchObject({ ok: true })
  await database().storedFile.update({ where: { sha256: named }, data: { storedAt: new Date(0) } })
  const young = await sent(`young ${randomUUID()}`, 6)
  const old = await sent(`old ${randomUUID()}`, 8)
  expect(await sweepInstalled()).toMatchObject({ removedFiles: 1 })
  expect(await isHeld(named)).toEqual({ file: true, row: true })
  expect(await isHeld(young)).toEqual({ file: true, row: true })
  expect(await isHeld(old)).toEqual({ file: false, row: false })
})

test('what was cleared cannot be attached any more, until it is sent again', async () => {
  const text = `cleared ${randomUUID()}`
  const sha256 = await sent(text, 8)
  await sweepInstalled()
  expect(await attach(sha256)).toMatchObject({ ok: false, fields: { file: 'Upload it again.' } })
  await sent(text, 0)
  expect(await attach(sha256)).toMatchObject({ ok: true })
})

test('an old upload that a command is just naming is not swept away under it', async () => {
  const sha256 = await sent(`contended ${randomUUID()}`, 8)
  const [attached] = await Promise.all([attach(sha256), sweepInstalled()])
  const held = await isHeld(sha256)
  expect(held).toEqual(attached.ok ? { file: true, row: true } : { file: false, row: false })
})

test('it sweeps at the start and again each time, also after a sweep that failed, until told to stop', async () => {
  const told = new AbortController()
  const quiet = vi.spyOn(process.stderr, 'write').mockReturnValue(true)
  let sweeps = 0
  await sweepDaily(
    told.signal,
    async () => {
      sweeps += 1
      if (sweeps === 1) throw new Error('The disk is away.')
      if (sweeps === 3) told.abort()
      return { removedFiles: 0, removedBytes: 0, removedUnfinished: 0 }
    },
    1,
  )
  expect(sweeps).toBe(3)
  expect(quiet.mock.calls.join('')).toContain('could not be swept')
  quiet.mockRestore()
})
