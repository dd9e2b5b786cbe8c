import { afterAll, beforeAll, expect, test } from 'vitest'
import { database } from '@/lib/db/client'
import { judgedProgramme } from '@/lib/programme/judged'
import {
  countRuleDifferences,
  readCompanyRules,
  readDifferingProgrammes,
  readPreferenceDifferences,
  readRuleDifferences,
} from '@/lib/queries/company-rules'
import { findLimit } from '@/shared/catalogue/standard-plan'
import { governingRequirement } from '@/shared/plan/requirement'
import { openWorld, programmeInput, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

/* ISO 9001:2015, 7.5.3: documented information is controlled; who uses it has the edition in force. The values are the test's own. */

let db: FreshDatabase
let world: World
let earlier: string
beforeAll(async () => {
  db = await freshDatabase()
  world = await openWorld()
  earlier = await idOf(world.code)
})
afterAll(() => db.drop())

const reason = 'So that the test has one.'
const idOf = async (code: string): Promise<string> =>
  (await database().programme.findUniqueOrThrow({ where: { code }, select: { id: true } })).id

const stateOf = async (code: string) => (await judgedProgramme(code))!.state

const MAGNIFICATION = findLimit('magnification-most')!
const inForce = async (code: string) => {
  const judged = await judgedProgramme(code)
  const { value, document } = governingRequirement(MAGNIFICATION, judged!.state.facts.requirements)
  return { value, document }
}
const state = async (value: number, edition: string, replaces: string | null = null): Promise<string> =>
  (
    await world.must('quality', 'state-company-rule', {
      limit: MAGNIFICATION.key,
      value,
      document: 'Handbook',
      edition,
      clause: '3.2',
      reason,
      replaces,
    })
  ).result.rule

let first: string
let second: string

test('a programme that is open keeps its facts when a rule is stated, and is shown the difference', async () => {
  const before = await judgedProgramme(world.code)
  first = await state(6, 'edition 1')
  const after = await judgedProgramme(world.code)
  expect(after).toBe(before)
  expect(await readRuleDifferences(earlier)).toMatchObject([
    { standing: 'stated', rule: { id: first, value: 6 }, goes: [], kept: null },
  ])
  expect(await countRuleDifferences(await stateOf(world.code))).toBe(1)
})

test('one that is opened now starts with the rule and the preferred value, each by its reference', async () => {
  await world.must('design', 'prefer-value', { parameter: 'board-thickness', value: 1.6, reason })
  await world.must('lead', 'open-programme', programmeInput('RULED-1'))
  const id = await idOf('RULED-1')
  expect(await inForce('RULED-1')).toEqual({ value: 6, document: 'Handbook, edition 1' })
  expect(await database().requirement.findFirst({ where: { programmeId: id } })).toMatchObject({
    companyRule: first,
    authority: 'company',
    authorId: world.person.quality,
  })
  const thickness = await database().revision.findFirst({
    where: { programmeId: id, parameter: 'board-thickness' },
  })
  expect(thickness).toMatchObject({ number: 1, value: 1.6, reason: `Preferred by the works: ${reason}` })
  expect(await readRuleDifferences(id)).toEqual([])
})

test('a new edition comes in place of the old layer, when the programme takes it over', async () => {
  second = await state(5, 'edition 2', first)
  const id = await idOf('RULED-1')
  expect(await inForce('RULED-1')).toEqual({ value: 6, document: 'Handbook, edition 1' })
  const [difference, ...others] = await readRuleDifferences(id)
  expect(others).toEqual([])
  expect(difference).toMatchObject({ standing: 'stated', rule: { id: second }, goes: [{ rule: first }] })
  const taking = { programme: 'RULED-1', rule: second, standing: 'stated' } as const
  expect(await world.as('stranger', 'take-company-rule', taking)).toMatchObject({ ok: false })
  await world.must('lead', 'take-company-rule', taking)
  expect(await inForce('RULED-1')).toEqual({ value: 5, document: 'Handbook, edition 2' })
  expect(await readRuleDifferences(id)).toEqual([])
  expect(await world.as('lead', 'take-company-rule', taking)).toMatchObject({
    ok: false,
    message: expect.stringContaining('does not differ'),
  })
})

test('a programme may keep its own with a reason, and take the rule over later all the same', async () => {
  const seen = { programme: world.code, rule: second, standing: 'stated' } as const
  await world.must('design', 'keep-own-rule', { ...seen, reason: 'The customer’s glasses are ours too.' })
  expect(await countRuleDifferences(await stateOf(world.code))).toBe(0)
  expect(await readRuleDifferences(earlier)).toMatchObject([
    { kept: { reason: 'The customer’s glasses are ours too.', by: 'Test design' } },
  ])
  await world.must('quality', 'take-company-rule', seen)
  expect(await inForce(world.code)).toEqual({ value: 5, document: 'Handbook, edition 2' })
})

test('a rule that is withdrawn stays where it was taken over until the programme takes it off', async () => {
  await world.must('quality', 'withdraw-company-rule', { rule: second, reason })
  expect(await inForce(world.code)).toEqual({ value: 5, document: 'Handbook, edition 2' })
  expect(
    await readDifferingProgrammes({ personId: world.person.lead, auditor: false }, await readCompanyRules()),
  ).toMatchObject([
    { code: 'RULED-1', differences: [{ standing: 'withdrawn' }] },
    { code: world.code, differences: [{ standing: 'withdrawn' }] },
  ])
  expect(
    await readDifferingProgrammes(
      { personId: world.person.stranger, auditor: false },
      await readCompanyRules(),
    ),
  ).toEqual([])
  await world.must('design', 'take-company-rule', {
    programme: world.code,
    rule: second,
    standing: 'withdrawn',
  })
  expect(await inForce(world.code)).toMatchObject({ value: MAGNIFICATION.byDefault.value })
  expect(await readRuleDifferences(earlier)).toEqual([])
})

test('what a document says of a limit already is stated in its place, not beside it', async () => {
  const third = await state(7, 'edition 3')
  expect(
    await world.as('quality', 'state-company-rule', {
      limit: MAGNIFICATION.key,
      value: 8,
      document: 'Handbook',
      edition: 'edition 4',
      clause: '3.2',
      reason,
    }),
  ).toMatchObject({ ok: false, message: expect.stringContaining('in its place') })
  expect(
    await world.as('quality', 'state-company-rule', {
      limit: 'training-valid-most',
      value: 12,
      document: 'Handbook',
      reason,
      replaces: third,
    }),
  ).toMatchObject({ ok: false })
})

test('a value that is asked for at the opening, or that its parameter does not take, is not preferred', async () => {
  for (const [parameter, value] of [
    ['service-years', 20],
    ['board-thickness', 'thick'],
    ['board-thickness', 1.6],
  ] as const)
    expect(await world.as('design', 'prefer-value', { parameter, value, reason })).toMatchObject({
      ok: false,
    })
})

test('a preferred value that changes later is shown where another is specified, until it is taken over or kept with a reason', async () => {
  const programme = await openWorld()
  const state = async () => (await judgedProgramme(programme.code))!.state
  const differences = async () => readPreferenceDifferences(await state())
  const counted = async () => countRuleDifferences(await state())
  const decided = await counted()
  const prefer = async (value: number) =>
    (await world.must('design', 'prefer-value', { parameter: 'flux-tank-volume', value, reason })).result
      .preference
  const revise = (value: number, seen: number) =>
    programme.must('production', 'revise-parameter', {
      programme: programme.code,
      parameter: 'flux-tank-volume',
      value,
      seen,
      reason,
    })

  await prefer(21)
  expect(await differences()).toEqual([])
  await revise(22, 0)
  expect(await differences()).toMatchObject([{ here: { number: 1, value: 22 }, kept: null }])
  expect(await counted()).toBe(decided + 1)
  await revise(21, 1)
  expect(await differences()).toEqual([])

  const preference = await prefer(20)
  const keep = { programme: programme.code, preference, reason: 'The tank of this line is smaller.' }
  expect(await programme.as('design', 'keep-own-value', keep)).toMatchObject({ ok: false })
  await programme.must('production', 'keep-own-value', keep)
  expect(await differences()).toMatchObject([
    { preference: { id: preference }, kept: { by: 'Test production', reason: keep.reason } },
  ])
  expect(await counted()).toBe(decided)
  const person = { personId: programme.person.quality, auditor: false }
  expect(await readDifferingProgrammes(person, await readCompanyRules())).toMatchObject([
    { code: programme.code, values: [{ preference: { id: preference }, kept: { reason: keep.reason } }] },
  ])

  await prefer(19)
  expect(await differences()).toMatchObject([{ kept: null }])
  expect(await programme.as('production', 'keep-own-value', keep)).toMatchObject({ ok: false })
})
