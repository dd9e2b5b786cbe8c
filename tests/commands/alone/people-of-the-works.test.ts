import { afterAll, beforeAll, expect, test } from 'vitest'
import { database } from '@/lib/db/client'
import { judgedProgramme } from '@/lib/programme/judged'
import { readTraining } from '@/lib/queries/people-of-the-works'
import { trainingInput } from '@/tests/commands/valid-inputs'
import { openWorld, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

/* IPC J-STD-001 and IEC 61191-1 ask that people be trained for what they do, as of the day they do it; the numbers are the test's own. */

let db: FreshDatabase
let one: World
let other: World
beforeAll(async () => {
  db = await freshDatabase()
  one = await openWorld()
  other = await openWorld()
})
afterAll(() => db.drop())

const WORKER = 'Goran Eide'
const works = { kind: 'people', code: 'people' } as const
const reason = 'The examination was of another person.'

const soldered = (world: World) =>
  world.must('production', 'add-record', {
    programme: world.code,
    kind: 'soldering-run',
    rows: [{ doneOn: '2026-03-02', worker: ' goran  EIDE', skill: 'hand-soldering', assemblies: 4 }],
  })

const finding = async ({ code }: World) => {
  const judged = await judgedProgramme(code)
  return judged?.judgement.findings.get('trained-people')
}

test('a certificate that lapsed before the work fails in each programme whose runs name the person, and one that holds in each', async () => {
  for (const world of [one, other]) await soldered(world)
  const lapsed = trainingInput({ worker: WORKER, passedOn: '2025-01-10', expiresOn: '2026-03-01' })
  await one.must('production', 'add-record', lapsed)
  for (const world of [one, other]) expect(await finding(world)).toMatchObject({ verdict: 'fails' })

  const held = trainingInput({ worker: WORKER, passedOn: '2026-02-01', expiresOn: '2027-06-30' })
  await other.must('quality', 'add-record', held)
  for (const world of [one, other]) expect(await finding(world)).toMatchObject({ verdict: 'meets' })

  const recorded = (await readTraining()).find(({ expiresOn }) => expiresOn === '2027-06-30')
  await one.must('production', 'withdraw-record', { works, record: recorded?.id ?? '', reason })
  for (const world of [one, other]) expect(await finding(world)).toMatchObject({ verdict: 'fails' })
})

test('a correction turns it in both as well', async () => {
  const [lapsed] = await readTraining()
  const { worker, skill, passedOn, certificate } = lapsed!
  await one.must('production', 'correct-record', {
    works,
    record: lapsed!.id,
    values: { worker, skill, passedOn, certificate, expiresOn: '2026-12-31' },
    seen: 0,
    reason,
  })
  for (const world of [one, other]) expect(await finding(world)).toMatchObject({ verdict: 'meets' })
})

test('training is added at the works only, by who belongs to a department there that keeps it', async () => {
  const { works: _, ...values } = trainingInput()
  expect(await one.as('production', 'add-record', { ...values, programme: one.code })).toMatchObject({
    ok: false,
    message: expect.stringContaining('with the people of the works'),
  })
  expect(await one.as('design', 'add-record', trainingInput())).toMatchObject({ ok: false })
  expect(await one.as('stranger', 'add-record', trainingInput())).toMatchObject({ ok: false })
})

test('a record of an earlier version stays with the programme that made it, and speaks for both', async () => {
  const { id: programmeId } = await database().programme.findUniqueOrThrow({ where: { code: one.code } })
  const old = await database().record.create({
    data: {
      id: '00000000-0000-7000-8000-00000000aaaa',
      trailId: programmeId,
      kind: 'training',
      data: {
        worker: 'Ada Brook',
        skill: 'rework',
        passedOn: '2026-01-02',
        expiresOn: '2027-01-01',
        certificate: 'C-9',
      },
      addedById: one.person.production,
      at: new Date('2026-01-03T08:00:00Z'),
    },
  })
  const found = (await readTraining()).find(({ id }) => id === old.id)
  expect(found?.recordedIn).toEqual({ kind: 'programme', code: one.code })
  expect(await one.as('production', 'withdraw-record', { works, record: old.id, reason })).toMatchObject({
    ok: false,
  })
  await one.must('production', 'withdraw-record', { programme: one.code, record: old.id, reason })
  expect((await readTraining()).find(({ id }) => id === old.id)?.withdrawn?.why).toBe(reason)
})
