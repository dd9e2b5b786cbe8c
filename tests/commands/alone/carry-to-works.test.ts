import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { POST } from '@/app/api/readings/route'
import { eachAtItsMoment } from '@/lib/db/row-reader'
import { judgedProgramme } from '@/lib/programme/judged'
import { carryToWorks } from '@/lib/programme/works/carry-to-works'
import { allTrails } from '@/lib/trail/all-trails'
import { verdictOnStored } from '@/lib/trail/verify-stored'
import { breaksInWords } from '@/shared/stored/stored-verdict'
import {
  BEFORE,
  databaseBeforeWorks,
  OTHER,
  TOKEN,
} from '@/tests/commands/before-works/database-before-works'
import { openWorld } from '@/tests/commands/world'
import { freshInstallation, type FreshInstallation } from '@/tests/setup/installation'

/* Programmes that logged for themselves, brought to a version in which machines of the works have logs. */

const NOW = new Date('2026-12-01T10:00:00Z')
let db: FreshInstallation
let carried: number
beforeAll(async () => {
  db = await freshInstallation(databaseBeforeWorks)
  carried = await carryToWorks(NOW)
})
afterAll(() => db.drop())

const verdicts = async (code: string) => {
  const judged = await judgedProgramme(code, NOW)
  return Object.fromEntries(
    [...(judged?.judgement.findings ?? [])].map(([rule, { verdict }]) => [rule, verdict]),
  )
}
const densities = async (code: string) => {
  const judged = await judgedProgramme(code, NOW)
  return (judged?.state.facts.records.logs.get('flux-density') ?? []).map((log) => ({
    code: log.code,
    values: log.readings.columns['densityGPerMl'] ?? [],
  }))
}

test('every log stands on a machine, one where line and machine were called alike', async () => {
  expect(carried).toBe(4)
  const machines = await db.client.machine.findMany({
    include: { line: true, logs: true },
    orderBy: { code: 'asc' },
  })
  expect(machines.map(({ code, kind, line, logs }) => [code, kind, line.code, logs.length])).toEqual([
    ['Fluxer 1', 'fluxer', 'Line 1', 2],
    ['Fluxer 1, Line 2', 'wave', 'Line 2', 1],
    ['Store', 'store', 'Line 1', 1],
  ])
  const stated = await db.client.programmeLine.findMany({ include: { line: true, programme: true } })
  expect(stated.map(({ line, programme }) => `${programme.code} ${line.code}`).sort()).toEqual(
    [`${BEFORE.code} Line 1`, `${OTHER} Line 1`, `${OTHER} Line 2`].sort(),
  )
})

test('nothing is carried a second time', async () => {
  const entries = await db.client.trailEntry.count()
  expect(await carryToWorks(NOW)).toBe(0)
  expect(await db.client.trailEntry.count()).toBe(entries)
})

test('people belong to the works in the department of their first membership', async () => {
  const departments = await db.client.person.findMany({ select: { name: true, worksDepartment: true } })
  const of = Object.fromEntries(departments.map(({ name, worksDepartment }) => [name, worksDepartment]))
  expect(of).toMatchObject({
    'Test lead': 'design',
    'Test production': 'production',
    'Test quality': 'quality',
    'Test auditor': null,
    'Test administrator': null,
    'Test stranger': null,
  })
})

test('whom an administrator left out of the works stays out at the next start', async () => {
  const fresh = await freshInstallation()
  const world = await openWorld()
  const email = 'left.out@test.invalid'
  await world.must('administrator', 'add-person', {
    email,
    name: 'Left Out',
    rights: 'member',
    passwordHash: null,
  })
  await world.must('lead', 'invite-member', { programme: world.code, email, department: 'production' })
  await carryToWorks(NOW)
  const { worksDepartment } = await fresh.client.person.findUniqueOrThrow({ where: { email } })
  expect(worksDepartment).toBeNull()
  await fresh.drop()
  db = await freshInstallation(databaseBeforeWorks)
  await carryToWorks(NOW)
})

test('every trail verifies, the old and the new', async () => {
  const trails = await allTrails(eachAtItsMoment)
  expect(trails.map(({ code }) => code)).toEqual([
    'installation',
    ...[BEFORE.code, OTHER].sort(),
    'Line Line 1',
    'Line Line 2',
    'Machine Fluxer 1',
    'Machine Fluxer 1, Line 2',
    'Machine Store',
  ])
  // The people of a test are in no trail.
  for (const { id, code } of trails.slice(1))
    expect(breaksInWords(await verdictOnStored(id), 10), code).toEqual([])
})

test('readings and tokens that a programme recorded are told when they are changed, all the same', async () => {
  const { id } = await db.client.programme.findUniqueOrThrow({ where: { code: BEFORE.code } })
  const changed = async (change: () => Promise<unknown>, back: () => Promise<unknown>) => {
    await change()
    const found = breaksInWords(await verdictOnStored(id), 10)
    await back()
    return found
  }
  const batch = await db.client.readingBatch.findFirstOrThrow({ where: { trailId: id } })
  const readings = (columns: object) =>
    db.client.readingBatch.update({
      where: { id: batch.id },
      data: { readings: { count: batch.count, columns } as object },
    })
  const { columns } = batch.readings as unknown as { columns: Record<string, number[]> }
  expect(
    await changed(
      () => readings({ ...columns, densityGPerMl: [0.81, 0.81] }),
      () => readings(columns),
    ),
  ).toEqual([expect.stringContaining('readings is not what was recorded')])
  const token = await db.client.machineToken.findFirstOrThrow({ where: { trailId: id } })
  const named = (name: string) => db.client.machineToken.update({ where: { id: token.id }, data: { name } })
  expect(
    await changed(
      () => named('Another'),
      () => named(token.name),
    ),
  ).toHaveLength(1)
  expect(breaksInWords(await verdictOnStored(id), 10)).toEqual([])
})

test('what each rule found before, it finds now', async () => {
  expect(await verdicts(BEFORE.code)).toMatchObject(BEFORE.verdicts.a)
})

test('the other programme reads its own readings whole, and the shared fluxer’s for the day it ran', async () => {
  expect(await densities(OTHER)).toEqual([
    { code: `FLUX-1 · ${BEFORE.code}`, values: [0.811] },
    { code: 'FLUX-1', values: [0.809] },
  ])
  expect(await densities(BEFORE.code)).toEqual([
    { code: 'FLUX-1', values: [0.811, 0.85] },
    { code: `FLUX-1 · ${OTHER}`, values: [0.809] },
  ])
})

test('an answer to a signal goes on answering, also where another programme reads the log', async () => {
  const answersOf = async (code: string) =>
    (await judgedProgramme(code, NOW))?.state.facts.records.byKind.get('signal-answer')
  expect(await answersOf(BEFORE.code)).toMatchObject([{ log: 'FLUX-1', cause: 'Wrong drum.' }])
  expect(await answersOf(OTHER)).toMatchObject([{ log: `FLUX-1 · ${BEFORE.code}`, cause: 'Wrong drum.' }])
})

describe('a token that a programme gave', () => {
  const push = (log: string) =>
    POST(
      new Request('http://localhost/api/readings', {
        method: 'POST',
        headers: { authorization: `Bearer ${TOKEN}`, 'content-type': 'application/json' },
        body: JSON.stringify({
          log,
          readings: [{ at: '2026-03-02T13:00:00Z', densityGPerMl: 0.812, temperatureC: 25 }],
        }),
      }),
    )

  test('pushes into the log that it pushed into, at the machine', async () => {
    expect((await push('FLUX-1')).status).toBe(200)
    expect(await densities(OTHER)).toEqual([
      { code: `FLUX-1 · ${BEFORE.code}`, values: [0.811, 0.812] },
      { code: 'FLUX-1', values: [0.809] },
    ])
    const batch = await db.client.readingBatch.findFirstOrThrow({ orderBy: { at: 'desc' } })
    const machine = await db.client.machine.findUniqueOrThrow({ where: { code: 'Fluxer 1' } })
    expect(batch.trailId).toBe(machine.id)
    expect(breaksInWords(await verdictOnStored(machine.id), 10)).toEqual([])
  })

  test('pushes into no log of another programme', async () => {
    expect((await push('BATH-9')).status).toBe(404)
  })
})
