import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { perform } from '@/lib/commands/perform'
import { database } from '@/lib/db/client'
import { deskOf } from '@/lib/queries/desk'
import { readProgramme } from '@/lib/queries/programme-reader'
import type { SignedIn } from '@/lib/auth/session'
import { verdictOnStored } from '@/lib/trail/verify-stored'
import { addDays, dateOf } from '@/shared/quantity/calendar'
import { openWorld, PASSWORD, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

/* Who may in whose stead is this project's own decision; separation of duties as in ISO/IEC 27002:2022, 5.3 (from memory). */

let db: FreshDatabase
/** Whose people go away, and another programme, whose people stand in. */
let home: World
let elsewhere: World
const today = dateOf(new Date())

beforeAll(async () => {
  db = await freshDatabase()
  home = await openWorld()
  elsewhere = await openWorld()
})
afterAll(() => db.drop())

type Who = keyof World['person']
const signedIn = (personId: string): SignedIn => ({
  personId,
  name: 'Test person',
  email: 'person@test.invalid',
  auditor: false,
  administrator: false,
  worksDepartment: null,
  mustChangePassword: false,
  hasPassword: true,
  signedInAt: 0,
  sessionId: randomUUID(),
})
const name = (absent: Who, delegate: Who, fromOn = today, toOn = addDays(today, 5)) =>
  home.as(absent, 'name-delegate', { delegate: elsewhere.person[delegate], fromOn, toOn })
const end = async (absent: Who, outcome: Awaited<ReturnType<typeof name>>) => {
  if (!outcome.ok) throw new Error(outcome.message)
  await home.must(absent, 'end-delegation', { delegation: outcome.result.delegation })
}
const revise = (by: Who, at = new Date()) =>
  perform(
    elsewhere.person[by],
    'revise-parameter',
    {
      programme: home.code,
      parameter: 'service-years',
      value: Math.random() * 20 + 1,
      seen: seen++,
      reason: 'So.',
    },
    { key: randomUUID(), at, proof: { password: PASSWORD } },
  )
let seen = 1

describe('somebody of the same department, with no part in the programme', () => {
  let named: Awaited<ReturnType<typeof name>>
  beforeAll(async () => {
    const before = await revise('design')
    expect(before).toMatchObject({ ok: false, message: expect.stringMatching(/^Only /) })
    seen = 1
    named = await name('design', 'design')
    expect(named).toMatchObject({ ok: true })
  })

  test('reads the programme and finds it on their desk, for whom they stand in', async () => {
    const read = await readProgramme(home.code, signedIn(elsewhere.person.design))
    expect(read).toMatchObject({ found: true, view: { actor: { departments: ['design'], leads: false } } })
    const { lines, standsInFor } = await deskOf(signedIn(elsewhere.person.design))
    expect(lines.map(({ code }) => code)).toContain(home.code)
    expect(standsInFor).toEqual([
      { personId: home.person.design, name: 'Test design', until: addDays(today, 5) },
    ])
  })

  test('acts as themselves “for” the other, and the entry says so; the trail verifies', async () => {
    const outcome = await revise('design')
    expect(outcome).toMatchObject({ ok: true })
    const entry = await database().trailEntry.findFirstOrThrow({
      where: { hash: outcome.ok ? outcome.hash : '' },
    })
    expect(entry).toMatchObject({
      actorId: elsewhere.person.design,
      actorName: 'Test design, for Test design',
    })
    expect(JSON.parse(entry.payload)).toMatchObject({
      standingInFor: [{ personId: home.person.design, name: 'Test design', until: addDays(today, 5) }],
    })
    expect(await verdictOnStored(entry.trailId)).toMatchObject({ intact: true })
  })

  test('does not invite, remove or lead', async () => {
    expect(
      await perform(
        elsewhere.person.design,
        'invite-member',
        { programme: home.code, email: 'x@test.invalid', department: 'design' },
        { key: randomUUID() },
      ),
    ).toMatchObject({ ok: false, message: 'Only the programme’s lead may do this.' })
  })

  test('may nothing on the day after the last, nor once it has ended', async () => {
    const after = new Date(`${addDays(today, 6)}T12:00:00Z`)
    expect(await revise('design', after)).toMatchObject({
      ok: false,
      message: expect.stringMatching(/^Only /),
    })
    await end('design', named)
    expect(await revise('design')).toMatchObject({ ok: false, message: expect.stringMatching(/^Only /) })
    const read = await readProgramme(home.code, signedIn(elsewhere.person.design))
    expect(read).toMatchObject({ refused: expect.stringContaining('not a member') })
  })
})

describe('it is refused', () => {
  test('to name somebody of another department only', async () => {
    expect(await name('design', 'production')).toMatchObject({
      ok: false,
      fields: { delegate: expect.stringContaining('belongs to no department of yours') },
    })
  })

  test('to name oneself, past days, days in the wrong order or more than a year', async () => {
    expect(
      await home.as('design', 'name-delegate', { delegate: home.person.design, fromOn: today, toOn: today }),
    ).toMatchObject({ ok: false, fields: { delegate: 'You cannot stand in for yourself.' } })
    for (const [from, to] of [
      [-9, -1],
      [5, 4],
      [0, 400],
    ] as const)
      expect(await name('design', 'design', addDays(today, from), addDays(today, to))).toMatchObject({
        ok: false,
        fields: { toOn: expect.any(String) },
      })
  })

  test('to name two for one day, or somebody who is away then', async () => {
    const first = await name('production', 'production')
    expect(await name('production', 'secondProduction', addDays(today, 5), addDays(today, 9))).toMatchObject({
      ok: false,
      fields: { fromOn: expect.stringContaining('End that first') },
    })
    expect(
      await elsewhere.as('secondProduction', 'name-delegate', {
        delegate: home.person.production,
        fromOn: today,
        toOn: today,
      }),
    ).toMatchObject({ ok: false, fields: { delegate: 'Test production is away on some of these days.' } })
    await end('production', first)
  })

  test('to decide for the other what they could not decide themselves', async () => {
    const item = 'laminate'
    await home.must('quality', 'propose-set-aside', { programme: home.code, item, reason: 'Not here.' })
    const named = await name('quality', 'quality')
    const decision = { programme: home.code, item, agree: true, comment: '' }
    expect(
      await perform(elsewhere.person.quality, 'decide-set-aside', decision, { key: randomUUID() }),
    ).toMatchObject({
      ok: false,
      message: expect.stringMatching(/^Test quality, for whom you stand in, could not decide this either\./),
    })
    const { lines } = await deskOf(signedIn(elsewhere.person.quality))
    expect(lines.filter(({ code, verb }) => code === home.code && verb === 'decide')).toEqual([])
    expect(await home.as('secondQuality', 'decide-set-aside', decision)).toMatchObject({ ok: true })
    await end('quality', named)
  })

  test('to end what is somebody else’s; either of the two may', async () => {
    const named = await name('secondDesign', 'secondDesign')
    const delegation = named.ok ? named.result.delegation : ''
    expect(await home.as('production', 'end-delegation', { delegation })).toMatchObject({
      ok: false,
      message: 'Only who is away, or who stands in, can end it.',
    })
    expect(await elsewhere.as('secondDesign', 'end-delegation', { delegation })).toMatchObject({ ok: true })
  })
})

test('who has a part of their own keeps to it: standing in adds no second department', async () => {
  await home.must('lead', 'invite-member', {
    programme: home.code,
    email: (await database().person.findUniqueOrThrow({ where: { id: elsewhere.person.secondQuality } }))
      .email,
    department: 'production',
  })
  const named = await name('secondQuality', 'secondQuality')
  const read = await readProgramme(home.code, signedIn(elsewhere.person.secondQuality))
  expect(read).toMatchObject({ view: { actor: { departments: ['production'], name: 'Test person' } } })
  await end('secondQuality', named)
})
