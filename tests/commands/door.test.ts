import { createHash, randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { InputOf } from '@/lib/commands/all-commands'
import { perform } from '@/lib/commands/perform'
import { database } from '@/lib/db/client'
import { judgedProgramme } from '@/lib/programme/judged'
import { verifyTrail } from '@/shared/trail/verify'
import type { Sha256 } from '@/shared/trail/sha256'
import { openWorld, programmeInput, trailLength, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

const sha256: Sha256 = (bytes) => createHash('sha256').update(bytes).digest('hex')

let db: FreshDatabase
let world: World
beforeAll(async () => {
  db = await freshDatabase()
  world = await openWorld()
})
afterAll(() => db.drop())

const ask = (question: string): InputOf<'ask-action'> => ({
  programme: world.code,
  item: 'programme-frame',
  from: 'design',
  to: 'production',
  kind: 'information',
  question,
  dueOn: '2099-01-01',
})

const entriesOf = async (code: string) => {
  const { id } = await database().programme.findUniqueOrThrow({ where: { code } })
  return database().trailEntry.findMany({ where: { trailId: id }, orderBy: { seq: 'asc' } })
}

describe('a form sent twice', () => {
  test('does its work once, and answers the same both times', async () => {
    const key = randomUUID()
    const send = () => perform(world.person.design, 'ask-action', ask('Sent twice?'), { key })
    const [first, second] = await Promise.all([send(), send()])
    expect(second).toEqual(first)
    expect(await database().action.count({ where: { question: 'Sent twice?' } })).toBe(1)
  })

  test('with other content under the same number is refused', async () => {
    const key = randomUUID()
    await perform(world.person.design, 'ask-action', ask('The first'), { key })
    const other = await perform(world.person.design, 'ask-action', ask('The second'), { key })
    expect(other).toMatchObject({ ok: false, message: expect.stringContaining('already sent') })
  })
})

describe('two people editing one value', () => {
  test('the second is told what it now says, and nothing is stored', async () => {
    const revise = (value: number, seen: number) =>
      world.as('lead', 'revise-parameter', {
        programme: world.code,
        parameter: 'service-years',
        value,
        seen,
        reason: 'Test',
      })
    expect(await revise(15, 1)).toMatchObject({ ok: true })
    const second = await revise(25, 1)
    expect(second).toMatchObject({ ok: false, fields: { seen: '2' } })
    expect(second).toMatchObject({ message: expect.stringContaining('15') })
    const newest = await database().revision.findFirst({
      where: { parameter: 'service-years' },
      orderBy: { number: 'desc' },
    })
    expect(newest?.value).toBe(15)
  })
})

describe('whose a thing is', () => {
  test('is asked on the rows just read: only the owner of a value revises it, and a refusal is not recorded', async () => {
    const before = await trailLength(world.code)
    const outcome = await world.as('production', 'revise-parameter', {
      programme: world.code,
      parameter: 'service-years',
      value: 17,
      seen: 0,
      reason: 'Test',
    })
    expect(outcome).toMatchObject({ ok: false, message: expect.stringContaining('belongs to design') })
    expect(await trailLength(world.code)).toBe(before)
  })

  test('is not told to who has no part in the programme: they learn no more than that', async () => {
    const missing = { programme: world.code, action: 999_999, comment: '' }
    expect(await world.as('stranger', 'accept-answer', missing)).toMatchObject({
      ok: false,
      message: expect.stringMatching(/^Only /),
    })
    expect(await world.as('design', 'accept-answer', missing)).toMatchObject({
      ok: false,
      message: 'There is no action 999999 in this programme.',
    })
  })

  test('changes with the rows: who answered an action does not accept the answer, though of both departments', async () => {
    const place = await openWorld()
    const email = (
      await database().person.findUniqueOrThrow({ where: { id: place.person.secondProduction } })
    ).email
    await place.must('lead', 'invite-member', { programme: place.code, email, department: 'design' })
    const { action } = (
      await place.must('design', 'ask-action', { ...ask('Of both?'), programme: place.code })
    ).result
    await place.must('secondProduction', 'answer-action', {
      programme: place.code,
      action,
      feasible: 'not asked',
      amounts: [],
      comment: 'Yes.',
    })
    const accept = { programme: place.code, action, comment: '' }
    expect(await place.as('secondProduction', 'accept-answer', accept)).toMatchObject({
      ok: false,
      message: expect.stringMatching(/^You answered it yourself/),
    })
    expect(await place.as('design', 'accept-answer', accept)).toMatchObject({ ok: true })
  })
})

test('a link that is none is told at the box it was typed into', async () => {
  const attach = { programme: world.code, item: 'programme-frame', kind: 'drawing', what: { url: 'no link' } }
  expect(await world.as('design', 'attach-evidence', attach)).toMatchObject({
    ok: false,
    message: 'A link starts with https:// or http://.',
    fields: { 'what.url': expect.any(String) },
  })
  expect(await world.asUnparsed('design', 'attach-evidence', { ...attach, what: {} })).toMatchObject({
    ok: false,
    fields: { what: 'Choose a file or give a link.' },
  })
})

test('a programme code that exists is refused by name, whatever its capitals', async () => {
  const outcome = await world.as('stranger', 'open-programme', programmeInput(world.code.toLowerCase()))
  expect(outcome).toMatchObject({ ok: false, fields: { code: expect.stringContaining('is taken') } })
})

test('what one command records is read back in the order in which it was given', async () => {
  const given = Array.from({ length: 200 }, (_, index) => `Order ${(index * 37) % 200}`)
  await world.must('quality', 'record-inspection', {
    programme: world.code,
    inspections: given.map((assembly) => ({
      assembly,
      inspectedOn: '2026-01-07',
      inspector: 'An inspector',
      magnification: 4,
      jointsSeen: 100,
      defects: [],
      note: '',
    })),
  })
  const judged = await judgedProgramme(world.code)
  const read = judged?.state.facts.records.inspections.map(({ assembly }) => assembly) ?? []
  expect(read.filter((assembly) => assembly.startsWith('Order '))).toEqual(given)
})

test('twenty writers on one programme: every acknowledged command is one entry, without a gap', async () => {
  const before = await trailLength(world.code)
  const outcomes = await Promise.all(
    Array.from({ length: 20 }, (_, index) => world.as('design', 'ask-action', ask(`Question ${index}`))),
  )
  expect(outcomes.every(({ ok }) => ok)).toBe(true)
  const entries = await entriesOf(world.code)
  expect(entries.map(({ seq }) => seq)).toEqual(Array.from({ length: before + 20 }, (_, index) => index + 1))
  expect(new Set(outcomes.map((outcome) => (outcome.ok ? outcome.seq : 0))).size).toBe(20)
  expect(verifyTrail(entries, sha256).breaks).toEqual([])
})

describe('the trail', () => {
  test.each([
    ['UPDATE', `UPDATE "TrailEntry" SET "actorName" = 'Somebody else'`],
    ['DELETE', 'DELETE FROM "TrailEntry"'],
    ['TRUNCATE', 'TRUNCATE "TrailEntry"'],
  ])('refuses %s in the database itself', async (verb, statement) => {
    await expect(database().$executeRawUnsafe(statement)).rejects.toThrow(
      `The trail is append-only: ${verb} is refused.`,
    )
  })

  test('says nothing of a command that was refused', async () => {
    const before = await trailLength(world.code)
    await world.as('stranger', 'ask-action', ask('May I?'))
    await world.as('design', 'ask-action', { ...ask('Too late?'), dueOn: '2001-01-01' })
    expect(await trailLength(world.code)).toBe(before)
  })
})

describe('a signature', () => {
  const approve = (password: string | undefined) =>
    perform(
      world.person.design,
      'approve-item',
      {
        programme: world.code,
        item: 'programme-frame',
        department: 'design',
        digest: '0'.repeat(64),
        comment: '',
      },
      { key: randomUUID(), proof: password === undefined ? {} : { password } },
    )

  test('asks for the password', async () => {
    expect(await approve(undefined)).toMatchObject({ ok: false, fields: { password: expect.any(String) } })
    expect(await approve('not my password')).toMatchObject({
      ok: false,
      message: expect.stringContaining('Nothing was signed'),
    })
  })
})

test('quality takes the lead only when the lead was disabled, and then leads', async () => {
  const place = await openWorld()
  const take = { programme: place.code, reason: 'Left the firm.' }
  expect(await place.as('quality', 'take-lead', take)).toMatchObject({
    ok: false,
    message: expect.stringContaining('leads the programme and can sign in'),
  })
  await place.must('administrator', 'disable-person', { personId: place.person.lead, reason: 'Left.' })
  await place.must('quality', 'take-lead', take)
  const invited = { programme: place.code, email: 'nobody@example.invalid', department: 'design' as const }
  expect(await place.as('quality', 'invite-member', invited)).not.toMatchObject({
    message: expect.stringMatching(/^Only /),
  })
})
