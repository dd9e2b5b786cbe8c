import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import type { InputOf } from '@/lib/commands/all-commands'
import { database } from '@/lib/db/client'
import { verdictOnStored } from '@/lib/trail/verify-stored'
import { entryTold } from '@/shared/commands/entry-told'
import type { Department } from '@/shared/plan/department'
import { noticeDigest, openWorld, trailLength, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

let db: FreshDatabase
let world: World
let notice: number
beforeAll(async () => {
  db = await freshDatabase()
})
afterAll(() => db.drop())

/** A notice of two values, one of design and one of production, and a limit; all proposed by design. */
beforeEach(async () => {
  world = await openWorld()
  const opened = await world.must('design', 'open-change-notice', {
    programme: world.code,
    title: 'Thicker gold',
    reason: 'The contacts are mated more often.',
    costPerBoard: 0.4,
  })
  notice = opened.result.notice
  await propose({ kind: 'value', parameter: 'contact-gold', value: 2, seen: 0 })
  await propose({ kind: 'value', parameter: 'contacts-covered', value: true, seen: 0 })
  await propose({
    kind: 'requirement',
    limit: 'magnification-most',
    authority: 'company',
    document: 'House rule 4',
    clause: '',
    value: 6,
    relaxes: false,
  })
})

const propose = async (
  change: InputOf<'propose-change'>['change'],
  who: 'design' | 'production' = 'design',
) =>
  (
    await world.must(who, 'propose-change', {
      programme: world.code,
      notice,
      change,
      reason: 'It wears.',
    })
  ).result.change
const answer = async (department: Department, agrees = true, who: keyof World['person'] = department) =>
  world.as(who, 'answer-change-notice', {
    programme: world.code,
    notice,
    department,
    answer: agrees ? 'agree' : 'object',
    reason: agrees ? '' : 'It costs too much.',
    digest: await noticeDigest(world.code, notice),
  })
const allAgree = async () => {
  for (const department of ['design', 'production', 'quality'] as const)
    expect(await answer(department)).toMatchObject({ ok: true })
}
const adopt = async (who: keyof World['person'] = 'quality') =>
  world.as(who, 'adopt-change-notice', {
    programme: world.code,
    notice,
    digest: await noticeDigest(world.code, notice),
    reason: 'Agreed by all.',
  })
const programme = () => database().programme.findUniqueOrThrow({ where: { code: world.code } })
const revisions = async (parameter: string) =>
  database().revision.findMany({ where: { parameter, programmeId: (await programme()).id } })

describe('a notice that every department agrees to', () => {
  test('is adopted at once: each change recorded as if alone, by its author, with the notice', async () => {
    await allAgree()
    const before = await trailLength(world.code)
    expect(await adopt()).toMatchObject({ ok: true, leads: { kind: 'notice', number: notice } })
    const { id } = await programme()
    const written = await database().trailEntry.findMany({
      where: { trailId: id, seq: { gt: before } },
      orderBy: { seq: 'asc' },
    })
    expect(written.map(({ command }) => command)).toEqual([
      'revise-parameter',
      'revise-parameter',
      'state-requirement',
      'adopt-change-notice',
    ])
    expect(entryTold(written[0]!)).toMatchObject({
      what: `2 µm, by change notice ${notice}`,
      words: 'It wears.',
    })
    expect(await revisions('contact-gold')).toMatchObject([
      { number: 1, value: 2, authorId: world.person.design, notice },
    ])
    expect(await database().requirement.findMany({ where: { programmeId: id } })).toMatchObject([
      { document: 'House rule 4', notice, authorId: world.person.design },
    ])
    expect((await verdictOnStored(id, new Map())).intact).toBe(true)
  })
  test('is not adopted by who proposed all of it, but is by another', async () => {
    await world.must('lead', 'invite-member', {
      programme: world.code,
      email: `design-${world.code}@test.invalid`.toLowerCase(),
      department: 'quality',
    })
    await allAgree()
    expect(await adopt('design')).toMatchObject({
      ok: false,
      message: expect.stringContaining('You proposed every'),
    })
    expect(await adopt('lead')).toMatchObject({ ok: true })
  })
  test('is answered anew once its costs are others, and what they were stands in the trail', async () => {
    await allAgree()
    const amend = () =>
      world.as('production', 'cost-change-notice', {
        programme: world.code,
        notice,
        costPerBoard: 0.55,
        costOnce: 900,
        reason: 'The plater quoted.',
      })
    expect(await amend()).toMatchObject({ ok: true })
    expect(await amend()).toMatchObject({ ok: false, message: expect.stringContaining('already') })
    const { id } = await programme()
    const entry = await database().trailEntry.findFirstOrThrow({
      where: { trailId: id, command: 'cost-change-notice' },
    })
    expect(entryTold(entry)?.what).toBe('0.4 a board, not known once → 0.55 a board, 900 once')
    expect(await adopt()).toMatchObject({ ok: false, message: expect.stringContaining('Not yet agreed') })
    await allAgree()
    expect(await adopt()).toMatchObject({ ok: true })
    expect((await verdictOnStored(id, new Map())).intact).toBe(true)
    expect(await amend()).toMatchObject({ ok: false, message: expect.stringContaining('was adopted') })
  })
  test('takes a requirement away as well', async () => {
    const { result: _, ...stated } = await world.must('quality', 'state-requirement', {
      programme: world.code,
      limit: 'magnification-most',
      authority: 'company',
      document: 'Old rule',
      clause: '',
      value: 5,
      relaxes: false,
      reason: 'R',
    })
    expect(stated.ok).toBe(true)
    const old = await database().requirement.findFirstOrThrow({
      where: { document: 'Old rule', programme: { code: world.code } },
    })
    await propose({ kind: 'withdrawal', requirement: old.id }, 'production')
    await allAgree()
    expect(await adopt()).toMatchObject({ ok: true })
    expect(await database().requirement.findUniqueOrThrow({ where: { id: old.id } })).toMatchObject({
      withdrawnNotice: notice,
      withdrawnById: world.person.production,
    })
    expect((await verdictOnStored((await programme()).id, new Map())).intact).toBe(true)
  })
})

describe('it is not adopted', () => {
  test('before all three agree, or over an objection; nothing is changed', async () => {
    await answer('design')
    expect(await adopt()).toMatchObject({ ok: false, message: /Not yet agreed.*Production, Quality/ })
    await answer('production', false)
    expect(await adopt()).toMatchObject({ ok: false, message: expect.stringContaining('objects: It costs') })
    expect(await revisions('contact-gold')).toEqual([])
  })
  test('when the notice changed after they agreed', async () => {
    await allAgree()
    await propose({ kind: 'value', parameter: 'contact-gold', value: 3, seen: 0 })
    expect(await adopt()).toMatchObject({ ok: false, message: expect.stringContaining('Not yet agreed') })
  })
  test('when a value was revised meanwhile, until the change is put in again', async () => {
    await allAgree()
    await world.must('design', 'revise-parameter', {
      programme: world.code,
      parameter: 'contact-gold',
      value: 1.5,
      seen: 0,
      reason: 'R',
    })
    expect(await adopt()).toMatchObject({ ok: false, message: expect.stringContaining('was revised since') })
    await propose({ kind: 'value', parameter: 'contact-gold', value: 2, seen: 1 })
    await allAgree()
    expect(await adopt()).toMatchObject({ ok: true })
    expect(await revisions('contact-gold')).toHaveLength(2)
  })
  test('by one digest that is out of date', async () => {
    await allAgree()
    expect(
      await world.as('quality', 'adopt-change-notice', {
        programme: world.code,
        notice,
        digest: 'a'.repeat(64),
        reason: 'R',
      }),
    ).toMatchObject({ ok: false, message: expect.stringContaining('Read it again') })
  })
})

describe('answers', () => {
  test('come from three people, and an objection says why', async () => {
    await world.must('lead', 'invite-member', {
      programme: world.code,
      email: `design-${world.code}@test.invalid`.toLowerCase(),
      department: 'production',
    })
    await answer('design')
    expect(await answer('production', true, 'design')).toMatchObject({
      ok: false,
      message: expect.stringContaining('You have answered for Design'),
    })
    expect(
      await world.as('quality', 'answer-change-notice', {
        programme: world.code,
        notice,
        department: 'quality',
        answer: 'object',
        digest: await noticeDigest(world.code, notice),
      }),
    ).toMatchObject({ ok: false, fields: { reason: expect.any(String) } })
  })
})

describe('a notice that is not adopted stays to be read', () => {
  const close = (who: keyof World['person'], disposition: 'refused' | 'withdrawn') =>
    world.as(who, 'close-change-notice', { programme: world.code, notice, disposition, reason: 'R' })
  test('withdrawn by who opened it; nothing can be put in, taken out, answered or adopted after', async () => {
    expect(await close('production', 'withdrawn')).toMatchObject({ ok: false })
    expect(await close('design', 'withdrawn')).toMatchObject({ ok: true })
    const proposed = await world.as('design', 'propose-change', {
      programme: world.code,
      notice,
      change: { kind: 'value', parameter: 'contact-nickel', value: 6, seen: 0 },
      reason: 'R',
    })
    for (const outcome of [proposed, await answer('quality'), await adopt()])
      expect(outcome).toMatchObject({ ok: false, message: expect.stringContaining('was withdrawn') })
    expect(await database().noticeChange.count({ where: { programmeId: (await programme()).id } })).toBe(3)
  })
  test('refused by quality over an objection, not without one', async () => {
    expect(await close('quality', 'refused')).toMatchObject({ ok: false })
    await answer('production', false)
    expect(await close('quality', 'refused')).toMatchObject({ ok: true })
    expect((await verdictOnStored((await programme()).id, new Map())).intact).toBe(true)
  })
})

test('a value that its parameter does not take is refused at its box, and one it has already', async () => {
  const typed = (value: number, seen = 0) =>
    world.as('design', 'propose-change', {
      programme: world.code,
      notice,
      change: { kind: 'value', parameter: 'contact-nickel', value, seen },
      reason: 'R',
    })
  expect(await typed(900)).toMatchObject({ ok: false, fields: { value: expect.any(String) } })
  expect(await typed(6, 4)).toMatchObject({ ok: false, fields: { seen: '0' } })
})
