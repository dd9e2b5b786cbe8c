import { randomUUID } from 'node:crypto'
import { Readable } from 'node:stream'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { database } from '@/lib/db/client'
import { installedStore } from '@/lib/evidence/installed-store'
import { isFileReached } from '@/lib/queries/stored-file'
import { registerFile } from '@/lib/evidence/register-file'
import { sweepInstalled } from '@/lib/evidence/sweep-installed'
import { readImport } from '@/lib/queries/read-import'
import { logTarget, targetFields } from '@/lib/readings/import-target'
import { VALID_INPUT } from '@/tests/commands/valid-inputs'
import { openWorld, type World } from '@/tests/commands/world'
import { freshInstallation, type FreshInstallation } from '@/tests/setup/installation'

/*
 * OWASP ASVS 5.0.0 V8.2.2 (no access to another's data by naming it) and V8.3.1 (decided at a trusted place):
 * the hash of a file is its name, not a right to it.
 */

let db: FreshInstallation
let ours: World
let theirs: World
beforeAll(async () => {
  db = await freshInstallation()
  ours = await openWorld()
  theirs = await openWorld()
})
afterAll(async () => {
  await db.drop()
})

type Who = keyof World['person']

const idOf = async ({ code }: World): Promise<string> =>
  (await database().programme.findUniqueOrThrow({ where: { code }, select: { id: true } })).id

/** A file as the upload routes take it: into the store, then registered as sent by somebody for a programme. */
async function sent(world: World, who: Who, text: string, at = new Date()): Promise<string> {
  const content = await (await installedStore()).put(Readable.from([Buffer.from(text)]))
  await registerFile(content, { personId: world.person[who], trailId: await idOf(world) }, at)
  return content.sha256
}

const attach = (world: World, who: Who, sha256: string, item = 'laminate') =>
  world.as(who, 'attach-evidence', {
    programme: world.code,
    item,
    kind: 'certificate',
    note: '',
    what: { sha256, fileName: 'certificate.txt' },
  })

const READINGS = 'at,density\n2026-03-01T08:00:00Z,0.81\n'
const readable = (): string => `${READINGS}2026-03-02T08:00:00Z,0.8${Math.floor(Math.random() * 1e9)}\n`

const preview = async (world: World, who: Who, sha256: string) =>
  readImport(
    sha256,
    { personId: world.person[who], trailId: await idOf(world) },
    targetFields(logTarget('FLUX', 'flux-density')),
    { mapping: undefined, form: {} },
  )

const NOT_THERE = { ok: false, fields: { file: 'Upload it again.' } }

describe('a file that somebody sent and no record names', () => {
  test('is theirs to preview and to attach, in the programme they sent it for', async () => {
    const sha256 = await sent(ours, 'quality', readable())
    expect(await preview(ours, 'quality', sha256)).toBeDefined()
    expect(await attach(ours, 'quality', sha256)).toMatchObject({ ok: true })
  })

  test('is nobody else’s, not even a colleague’s in the same programme', async () => {
    const sha256 = await sent(ours, 'quality', readable())
    expect(await preview(ours, 'production', sha256)).toBeUndefined()
    expect(await attach(ours, 'production', sha256)).toMatchObject(NOT_THERE)
  })

  test('is not there for the same person in another programme', async () => {
    await ours.must('lead', 'invite-member', {
      programme: ours.code,
      email: (await database().person.findUniqueOrThrow({ where: { id: theirs.person.quality } })).email,
      department: 'quality',
    })
    const sha256 = await sent(theirs, 'quality', readable())
    const inBoth = { ...ours, person: { ...ours.person, quality: theirs.person.quality } }
    expect(await preview(inBoth, 'quality', sha256)).toBeUndefined()
    const outcome = await theirs.as('quality', 'attach-evidence', {
      programme: ours.code,
      item: 'laminate',
      kind: 'certificate',
      note: '',
      what: { sha256, fileName: 'certificate.txt' },
    })
    expect(outcome).toMatchObject(NOT_THERE)
  })
})

describe('a file that a record names', () => {
  test('is open to everybody who may read that programme, withdrawn or not', async () => {
    const sha256 = await sent(ours, 'quality', readable())
    const attached = await attach(ours, 'quality', sha256)
    expect(await preview(ours, 'production', sha256)).toBeDefined()
    expect(await attach(ours, 'production', sha256, 'board-finish')).toMatchObject({ ok: true })
    await ours.must('quality', 'withdraw-evidence', {
      programme: ours.code,
      evidence: attached.ok ? attached.result['evidence'] : '',
      reason: 'It was of another lot.',
    })
    expect(await preview(ours, 'production', sha256)).toBeDefined()
  })

  test('does not exist for another programme, by whatever command it is named', async () => {
    const sha256 = await sent(theirs, 'quality', readable())
    await attach(theirs, 'quality', sha256)
    expect(await preview(ours, 'quality', sha256)).toBeUndefined()
    expect(await attach(ours, 'quality', sha256)).toMatchObject(NOT_THERE)
    for (const command of ['add-readings', 'test-lot'] as const) {
      const input = await VALID_INPUT[command](ours, 'quality')
      expect(await ours.as('quality', command, { ...input, file: sha256 })).toMatchObject(NOT_THERE)
    }
    expect(await database().readingBatch.count({ where: { sha256 } })).toBe(0)
  })

  test('is told apart from one that was never sent by nothing', async () => {
    const sha256 = await sent(theirs, 'quality', readable())
    const unknown = randomUUID().replaceAll('-', '').repeat(2)
    expect(await attach(ours, 'quality', sha256)).toEqual(await attach(ours, 'quality', unknown))
  })

  test('of a machine’s readings is open at the machine through the batch that names it', async () => {
    const input = await VALID_INPUT['add-readings'](ours, 'production')
    const { id: trailId } = await database().machine.findUniqueOrThrow({ where: { code: input.machine } })
    const content = await (await installedStore()).put(Readable.from([readable()]), { fileName: 'a.csv' })
    const { sha256 } = content
    await registerFile(content, { personId: ours.person.production, trailId })
    expect(await ours.as('production', 'add-readings', { ...input, file: sha256 })).toMatchObject({
      ok: true,
    })
    const reached = (who: 'quality' | 'design') =>
      isFileReached(sha256, { personId: ours.person[who], trailId })
    expect(await reached('quality')).toBe(true)
    expect(await preview(ours, 'quality', sha256)).toBeUndefined()
  })
})

test('the same bytes sent by two people are one file with two registrations', async () => {
  const text = readable()
  const sha256 = await sent(ours, 'quality', text)
  expect(await sent(theirs, 'design', text)).toBe(sha256)
  expect(await database().storedFile.count({ where: { sha256 } })).toBe(1)
  expect(await database().upload.count({ where: { sha256 } })).toBe(2)
  expect(await attach(ours, 'quality', sha256)).toMatchObject({ ok: true })
  expect(await attach(theirs, 'quality', sha256)).toMatchObject(NOT_THERE)
  expect(await attach(theirs, 'design', sha256)).toMatchObject({ ok: true })
})

test('what was sent before uploads were registered is reached through records only, and else cleared', async () => {
  const content = await (await installedStore()).put(Readable.from([Buffer.from(readable())]))
  const { sha256, size, mediaType } = content
  await database().storedFile.create({ data: { sha256, size, mediaType, storedAt: new Date() } })
  expect(await attach(ours, 'quality', sha256)).toMatchObject(NOT_THERE)
  await database().evidence.create({
    data: {
      id: randomUUID(),
      trailId: await idOf(theirs),
      itemKey: 'laminate',
      kind: 'certificate',
      note: '',
      sha256,
      addedById: theirs.person.design,
      at: new Date(),
    },
  })
  expect(await preview(theirs, 'quality', sha256)).toBeDefined()
  expect(await preview(ours, 'quality', sha256)).toBeUndefined()
})

test('a registration goes after a week, the file it was about stays while a record names it', async () => {
  const text = readable()
  const longAgo = new Date(Date.now() - 8 * 86_400_000)
  const sha256 = await sent(ours, 'quality', text, longAgo)
  await sent(theirs, 'quality', text)
  await attach(theirs, 'quality', sha256)
  await sweepInstalled()
  expect(await database().storedFile.count({ where: { sha256 } })).toBe(1)
  expect(await preview(ours, 'quality', sha256)).toBeUndefined()
  expect(await preview(theirs, 'production', sha256)).toBeDefined()
})
