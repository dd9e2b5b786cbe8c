import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { InputOf } from '@/lib/commands/all-commands'
import { perform } from '@/lib/commands/perform'
import { database } from '@/lib/db/client'
import { judgedProgramme } from '@/lib/programme/judged'
import { deskOf } from '@/lib/queries/desk'
import { lessonsFor } from '@/lib/queries/lessons'
import { governingRequirement } from '@/shared/plan/requirement'
import { ionicResidueMax } from '@/shared/plan/limits/assessment-residue'
import { openWorld, programmeInput, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

let db: FreshDatabase
let world: World
beforeAll(async () => {
  db = await freshDatabase()
  world = await openWorld()
})
afterAll(() => db.drop())

type Change = InputOf<'propose-lesson'>['change']

const ITEM: Change & { kind: 'item' } = {
  kind: 'item',
  item: {
    stage: 'control',
    title: 'Warm-up of the line',
    asks: 'From when on do readings of a shift count?',
    owner: 'production',
    approvers: ['quality', 'production'],
    evidence: 'record of a cold start',
  },
}
const LIMIT: Change & { kind: 'limit' } = { kind: 'limit', limit: 'ionic-residue-most', value: 1 }
const proposal = (change: Change): InputOf<'propose-lesson'> => ({
  programme: world.code,
  title: 'Start cold, read late',
  learnt: 'The first readings after the start are those of a machine that has not settled.',
  source: { kind: 'item', key: 'programme-frame' },
  change,
})
const decision = (lesson: number, accept = true): InputOf<'decide-lesson'> => ({
  programme: world.code,
  lesson,
  accept,
  reason: 'Seen twice.',
})

const openAnother = async (at?: Date): Promise<string> => {
  const code = `L-${randomUUID().slice(0, 8)}`.toUpperCase()
  const outcome = await perform(world.person.stranger, 'open-programme', programmeInput(code), {
    key: randomUUID(),
    ...(at && { at }),
  })
  expect(outcome).toMatchObject({ ok: true })
  return code
}
const openingEntry = async (code: string) => {
  const { id } = await database().programme.findUniqueOrThrow({ where: { code } })
  const { payload } = await database().trailEntry.findFirstOrThrow({ where: { trailId: id, seq: 1 } })
  return JSON.parse(payload) as { lessons: Record<string, unknown>[] }
}
const quality = async (who: 'quality' | 'secondQuality') => ({
  personId: world.person[who],
  name: who,
  auditor: false,
  administrator: false,
})

describe('a lesson', () => {
  let number: number
  beforeAll(async () => {
    number = (await world.must('production', 'propose-lesson', proposal(ITEM))).result.lesson
  })

  test('waits on the desk of quality, and changes nothing until it is decided', async () => {
    const { lines } = await deskOf((await quality('quality')) as Parameters<typeof deskOf>[0])
    expect(lines).toContainEqual(
      expect.objectContaining({ verb: 'decide', place: { kind: 'lesson', number }, code: world.code }),
    )
    const items = await database().planItem.findMany({
      where: { programme: { code: await openAnother() }, key: { startsWith: 'own-' } },
    })
    expect(items).toEqual([])
  })

  test('is not decided without the password, nor by production', async () => {
    const unsigned = await perform(world.person.quality, 'decide-lesson', decision(number), {
      key: randomUUID(),
      proof: { password: 'not the password' },
    })
    expect(unsigned).toMatchObject({ ok: false })
    expect(await world.as('production', 'decide-lesson', decision(number))).toMatchObject({
      ok: false,
      message: 'Only quality may do this.',
    })
  })

  test('is accepted once; the item is in the plans opened afterwards, and their trail says from which lesson', async () => {
    await world.must('quality', 'decide-lesson', decision(number))
    expect(await world.as('secondQuality', 'decide-lesson', decision(number))).toMatchObject({
      ok: false,
      message: expect.stringMatching(/^Test quality has accepted it already/),
    })
    const code = await openAnother()
    const judged = await judgedProgramme(code)
    const item = judged?.state.items.find(({ definition }) => definition.key === 'own-1')
    expect(item).toMatchObject({
      added: true,
      lesson: { programme: world.code, number },
      definition: {
        stage: 'control',
        title: 'Warm-up of the line',
        asks: 'From when on do readings of a shift count?',
        approvers: ['production', 'quality'],
        evidence: [{ label: 'record of a cold start', required: true }],
      },
    })
    expect((await openingEntry(code)).lessons).toEqual([
      expect.objectContaining({
        lesson: `${world.code}, lesson ${number}`,
        from: { programme: world.code, number },
        addedItem: 'own-1',
      }),
    ])
    const added = await perform(
      world.person.stranger,
      'add-item',
      { programme: code, item: { ...ITEM.item, title: 'Another' } },
      { key: randomUUID() },
    )
    expect(added).toMatchObject({ ok: true, result: { item: 'own-2' } })
  })

  test('does not reach a programme opened before it was accepted', async () => {
    const code = await openAnother(new Date('2020-01-01T08:00:00Z'))
    expect((await openingEntry(code)).lessons).toEqual([])
  })
})

test('an accepted limit rules in later programmes as a company requirement, with its lesson as the clause', async () => {
  const proposed = await world.must('design', 'propose-lesson', proposal(LIMIT))
  await world.must('quality', 'decide-lesson', decision(proposed.result.lesson))
  const judged = await judgedProgramme(await openAnother())
  const governing = governingRequirement(ionicResidueMax, judged?.state.facts.requirements ?? [])
  expect(governing).toMatchObject({ value: 1, authority: 'company', document: 'Lessons learnt' })
  expect(governing.layers).toContainEqual(
    expect.objectContaining({
      clause: `${world.code}, lesson ${proposed.result.lesson}`,
      lesson: { programme: world.code, number: proposed.result.lesson },
    }),
  )
})

test('a declined lesson changes nothing, and may be proposed again', async () => {
  const change = { ...LIMIT, value: 0.9 }
  const proposed = await world.must('design', 'propose-lesson', proposal(change))
  await world.must('quality', 'decide-lesson', decision(proposed.result.lesson, false))
  const { lessons } = await openingEntry(await openAnother())
  expect(lessons.map(({ value }) => value)).not.toContain(0.9)
  expect(await world.as('design', 'propose-lesson', proposal(change))).toMatchObject({ ok: true })
})

describe('it is refused', () => {
  test('to decide on one’s own lesson', async () => {
    const proposed = await world.must('quality', 'propose-lesson', proposal({ ...LIMIT, value: 0.8 }))
    expect(await world.as('quality', 'decide-lesson', decision(proposed.result.lesson))).toMatchObject({
      ok: false,
      message: 'You proposed it. Somebody else of quality decides.',
    })
    const { lines } = await deskOf((await quality('quality')) as Parameters<typeof deskOf>[0])
    const mine = { kind: 'lesson', number: proposed.result.lesson }
    expect(lines.map(({ place }) => place)).not.toContainEqual(mine)
  })

  test('to propose a limit that is no stricter than every programme has', async () => {
    expect(await world.as('design', 'propose-lesson', proposal({ ...LIMIT, value: 2 }))).toMatchObject({
      ok: false,
      fields: { 'change.value': expect.stringContaining('changes nothing') },
    })
  })

  test('to propose what another lesson brought', async () => {
    expect(await world.as('design', 'propose-lesson', proposal(LIMIT))).toMatchObject({
      ok: false,
      message: expect.stringContaining('brought the same change'),
    })
  })

  test('to name a source that the programme does not have', async () => {
    const source = { kind: 'record' as const, key: randomUUID() }
    const input = { ...proposal({ ...LIMIT, value: 0.7 }), source }
    expect(await world.as('design', 'propose-lesson', input)).toMatchObject({
      ok: false,
      fields: { source: expect.any(String) },
    })
  })
})

test('a finding and a record are kept in the words of the day', async () => {
  await world.must('quality', 'add-record', {
    programme: world.code,
    kind: 'field-return',
    rows: [{ returnedOn: '2026-01-09', assembly: 'A-7', cause: 'board', jointsFailed: 0, cost: 180 }],
  })
  const { id } = await database().record.findFirstOrThrow({ where: { kind: 'field-return' } })
  const from = async (source: InputOf<'propose-lesson'>['source'], value: number) => {
    const input = { ...proposal({ ...LIMIT, value }), source }
    const { result } = await world.must('design', 'propose-lesson', input)
    return database().lesson.findFirstOrThrow({
      where: { programme: { code: world.code }, number: result.lesson },
    })
  }
  expect((await from({ kind: 'record', key: id }, 0.6)).source).toMatchObject({
    says: 'Field return: 2026-01-09, A-7, Board: barrel, track or laminate, 0 joints, 180',
  })
  expect((await from({ kind: 'finding', key: 'joint-budget' }, 0.5)).source).toMatchObject({
    says: expect.stringMatching(/^Joint reliability budget: Cannot be judged without/),
  })
})

test('accepted lessons are for everybody to read; the others only where one belongs', async () => {
  const asStranger = await lessonsFor({ personId: randomUUID(), auditor: false })
  expect(asStranger.length).toBeGreaterThan(0)
  expect(asStranger.every(({ decided }) => decided?.accepted)).toBe(true)
  const asMember = await lessonsFor({ personId: world.person.design, auditor: false })
  expect(asMember.some(({ decided }) => decided === null)).toBe(true)
})

test('a retired lesson no longer reaches programmes opened later, stays in those that have it, and may be proposed anew', async () => {
  const change = { ...LIMIT, value: 0.7 }
  const { lesson } = (await world.must('design', 'propose-lesson', proposal(change))).result
  const retirement = { programme: world.code, lesson, reason: 'The standard plan asks for it now.' }
  expect(await world.as('quality', 'retire-lesson', retirement)).toMatchObject({
    ok: false,
    message: expect.stringContaining('Only an accepted lesson'),
  })
  await world.must('quality', 'decide-lesson', decision(lesson))
  const before = await openAnother()
  await world.must('secondQuality', 'retire-lesson', retirement)
  const valuesOf = async (code: string) => (await openingEntry(code)).lessons.map(({ value }) => value)
  expect(await valuesOf(await openAnother())).not.toContain(0.7)
  const judged = await judgedProgramme(before)
  expect(governingRequirement(ionicResidueMax, judged?.state.facts.requirements ?? []).value).toBe(0.7)
  expect(await world.as('quality', 'retire-lesson', retirement)).toMatchObject({
    ok: false,
    message: expect.stringMatching(/^Test secondQuality has retired it already/),
  })
  expect(await world.as('design', 'propose-lesson', proposal(change))).toMatchObject({ ok: true })
})
