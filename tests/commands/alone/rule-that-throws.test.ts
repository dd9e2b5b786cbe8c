import { randomUUID } from 'node:crypto'
import { afterAll, afterEach, beforeAll, beforeEach, expect, test, vi } from 'vitest'
import type { InputOf } from '@/lib/commands/all-commands'
import { database } from '@/lib/db/client'
import { judgedProgramme } from '@/lib/programme/judged'
import { STANDARD_PLAN } from '@/shared/catalogue/standard-plan'
import type { RecordKindKey } from '@/shared/records/record-kinds'
import { openWorld, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

let db: FreshDatabase
let world: World
let written: string[]
beforeAll(async () => {
  db = await freshDatabase()
})
afterAll(() => db.drop())
beforeEach(async () => {
  world = await openWorld()
  written = []
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    written.push(String(text))
    return true
  })
})
afterEach(() => {
  vi.restoreAllMocks()
})

const RULE = 'trained-people'
const PEOPLE = { kind: 'people', code: 'people' } as const
const passed = { worker: 'A', skill: 'hand-soldering', passedOn: '2026-01-12', certificate: 'H-1' }
const record = (kind: RecordKindKey, rows: InputOf<'add-record'>['rows']) =>
  world.must('production', 'add-record', { programme: world.code, kind, rows })
const finding = async () => (await judgedProgramme(world.code))?.judgement.findings.get(RULE)
/** The log lines that name the rule. */
const logged = () => written.filter((line) => line.includes('could not be computed') && line.includes(RULE))

test('a date that does not exist is refused at the door', async () => {
  const outcome = await world.as('production', 'add-record', {
    works: PEOPLE,
    kind: 'training',
    rows: [{ ...passed, expiresOn: '2027-02-30' }],
  })
  expect(outcome).toMatchObject({ ok: false, message: 'Valid to is not a date of the calendar.' })
})

test('one that an earlier version stored leaves its rule undetermined, logged once, until it is withdrawn', async () => {
  await record('soldering-run', [
    { doneOn: '2026-02-02', worker: 'A', skill: 'hand-soldering', assemblies: 1 },
  ])
  await world.must('production', 'add-record', {
    works: PEOPLE,
    kind: 'training',
    rows: [{ ...passed, expiresOn: '2027-02-28' }],
  })
  const { id: programmeId } = await database().programme.findUniqueOrThrow({ where: { code: world.code } })
  const id = randomUUID()
  await database().record.create({
    data: {
      id,
      trailId: programmeId,
      kind: 'training',
      data: { ...passed, expiresOn: '2027-02-30' },
      addedById: world.person.production,
      at: new Date(),
    },
  })

  const judged = await judgedProgramme(world.code)
  expect(judged?.judgement.findings.get(RULE)).toMatchObject({
    verdict: 'undetermined',
    found: expect.stringContaining('"2027-02-30" is not a date of the calendar'),
  })
  expect(judged?.judgement.items).toHaveLength(STANDARD_PLAN.length)
  expect(logged()).toHaveLength(1)
  expect(JSON.parse(logged()[0] ?? '')).toMatchObject({
    level: 'error',
    programme: world.code,
    rule: RULE,
    error: { message: expect.stringContaining('2027-02-30') },
  })

  await record('quality-cost', [
    { spentOn: '2026-02-02', costClass: 'prevention', amount: 10, what: 'Training' },
  ])
  expect(await finding()).toMatchObject({ verdict: 'undetermined' })
  expect(logged()).toHaveLength(1)

  await world.must('production', 'withdraw-record', {
    programme: world.code,
    record: id,
    reason: 'There is no such day.',
  })
  expect((await finding())?.found).not.toContain('could not be computed')
})
