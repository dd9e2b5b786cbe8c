import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { InputOf } from '@/lib/commands/all-commands'
import { database } from '@/lib/db/client'
import { entryTold } from '@/shared/commands/entry-told'
import type { JsonValue } from '@/shared/trail/canonical-json'
import { openWorld, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

let db: FreshDatabase
let world: World
beforeAll(async () => {
  db = await freshDatabase()
  world = await openWorld()
})
afterAll(() => db.drop())

interface Given {
  readonly name: string
  readonly values?: Readonly<Record<string, JsonValue>>
  readonly actions?: readonly number[]
}
const studyOf = (...given: readonly Given[]): InputOf<'open-option-study'> => ({
  programme: world.code,
  item: 'programme-frame',
  title: 'How long must it hold, and how many are made?',
  alternatives: given.map(({ name, values = {}, actions = [] }) => ({
    name,
    note: '',
    values,
    costPerBoard: 1,
    costOnce: 0,
    actions: [...actions],
  })),
})
const open = async (...given: readonly Given[]): Promise<number> =>
  (await world.must('design', 'open-option-study', studyOf(...given))).result.study

const storedValues = async (number: number) =>
  (
    (await database().optionStudy.findFirstOrThrow({ where: { number, programme: { code: world.code } } }))
      .alternatives as unknown as { values: object }[]
  ).map(({ values }) => values)

const newest = (parameter: string) =>
  database().revision.findFirstOrThrow({
    where: { parameter, programme: { code: world.code } },
    orderBy: { number: 'desc' },
  })
const seenNow = async (...parameters: readonly string[]) =>
  Object.fromEntries(
    await Promise.all(parameters.map(async (parameter) => [parameter, (await newest(parameter)).number])),
  )
const adopt = (
  study: number,
  alternative: string,
  seen: Record<string, number>,
): InputOf<'adopt-option'> => ({
  programme: world.code,
  study,
  alternative,
  seen,
  reason: 'Agreed in the review.',
})

describe('opening a study', () => {
  test('keeps only what differs, and says of every alternative what it means by it', async () => {
    const today = (await newest('service-years')).value
    const volume = (await newest('annual-volume')).value as number
    const study = await open(
      { name: 'As it is', values: { 'annual-volume': volume } },
      { name: 'Longer', values: { 'service-years': 33, 'annual-volume': volume } },
    )
    expect(await storedValues(study)).toEqual([{ 'service-years': today }, { 'service-years': 33 }])
  })

  test.each([
    ['a value out of its bounds', { 'service-years': 900 }, 'alternatives.1.values.service-years'],
    ['a parameter there is not', { 'pot-colour': 'red' }, 'alternatives.1.values.pot-colour'],
    [
      'a cell of a table',
      { 'solder-exposures': [{ step: 'Wave', kind: 'wave', temperatureC: 'hot', seconds: 3, times: 1 }] },
      'alternatives.1.values.solder-exposures.0.temperatureC',
    ],
  ])('refuses %s at its own field', async (_what, values, field) => {
    const outcome = await world.as(
      'design',
      'open-option-study',
      studyOf({ name: 'A' }, { name: 'B', values }),
    )
    expect(outcome).toMatchObject({ ok: false, fields: { [field]: expect.any(String) } })
  })

  test('refuses the second of two names that differ in capitals only', async () => {
    const outcome = await world.as('design', 'open-option-study', studyOf({ name: 'Tin' }, { name: 'TIN' }))
    expect(outcome).toMatchObject({ ok: false, fields: { 'alternatives.1.name': expect.any(String) } })
  })

  test('lets an alternative rest on answered actions only', async () => {
    const { result } = await world.must('design', 'ask-action', {
      programme: world.code,
      item: 'programme-frame',
      from: 'design',
      to: 'production',
      kind: 'cost',
      question: 'What does the longer life cost?',
      dueOn: '2099-01-01',
    })
    const { action } = result
    const resting = studyOf({ name: 'A' }, { name: 'B', actions: [action] })
    expect(await world.as('design', 'open-option-study', resting)).toMatchObject({
      ok: false,
      fields: { 'alternatives.1.actions': expect.stringContaining(`Action ${action}`) },
    })
    await world.must('production', 'answer-action', {
      programme: world.code,
      action,
      feasible: 'yes',
      amount: 2,
      amountPer: 'board',
      leadTimeDays: null,
      comment: 'Two a board.',
    })
    expect(await world.as('design', 'open-option-study', resting)).toMatchObject({ ok: true })
  })
})

describe('adopting an alternative', () => {
  test('revises what differs, each revision naming the study and the reason', async () => {
    const study = await open(
      { name: 'Short', values: { 'service-years': 5 } },
      { name: 'Long', values: { 'service-years': 25 } },
    )
    const before = await newest('service-years')
    await world.must('design', 'adopt-option', adopt(study, 'Long', await seenNow('service-years')))
    const after = await newest('service-years')
    expect(after).toMatchObject({ value: 25, number: before.number + 1 })
    expect(after.reason).toBe(`Option study ${study}, “Long”: Agreed in the review.`)
  })

  test('a second time is refused with what was adopted, and changes nothing', async () => {
    const study = await open(
      { name: 'Short', values: { 'service-years': 6 } },
      { name: 'Long', values: { 'service-years': 26 } },
    )
    await world.must('design', 'adopt-option', adopt(study, 'Short', await seenNow('service-years')))
    const second = await world.as(
      'lead',
      'adopt-option',
      adopt(study, 'Long', await seenNow('service-years')),
    )
    expect(second).toMatchObject({ ok: false, message: expect.stringContaining('“Short” was adopted') })
    expect((await newest('service-years')).value).toBe(6)
  })

  test('is refused when a compared value was revised since the study was read', async () => {
    const study = await open(
      { name: 'Short', values: { 'service-years': 7 } },
      { name: 'Long', values: { 'service-years': 27 } },
    )
    const seen = await seenNow('service-years')
    await world.must('lead', 'revise-parameter', {
      programme: world.code,
      parameter: 'service-years',
      value: 14,
      seen: seen['service-years'],
      reason: 'Test',
    })
    const stale = await world.as('design', 'adopt-option', adopt(study, 'Long', seen))
    expect(stale).toMatchObject({ ok: false, message: expect.stringContaining('was revised since') })
    expect((await newest('service-years')).value).toBe(14)
    expect(
      await world.as('design', 'adopt-option', adopt(study, 'Long', await seenNow('service-years'))),
    ).toMatchObject({
      ok: true,
    })
  })

  test('is for the owners of what it changes, and the lead', async () => {
    const study = await open(
      { name: 'Few', values: { 'annual-volume': 50 } },
      { name: 'Many', values: { 'annual-volume': 5000 } },
    )
    const asked = adopt(study, 'Many', await seenNow('annual-volume'))
    expect(await world.as('design', 'adopt-option', asked)).toMatchObject({
      ok: false,
      message: expect.stringContaining('belongs to production'),
    })
    expect(await world.as('production', 'adopt-option', asked)).toMatchObject({ ok: true })
  })

  test('that changes nothing decides the study and revises nothing', async () => {
    const today = await newest('service-years')
    const study = await open({ name: 'As it is' }, { name: 'Long', values: { 'service-years': 41 } })
    await world.must('design', 'adopt-option', adopt(study, 'As it is', await seenNow('service-years')))
    expect((await newest('service-years')).number).toBe(today.number)
  })

  test('of a name the study does not have is refused at its field', async () => {
    const study = await open({ name: 'A' }, { name: 'B' })
    expect(await world.as('lead', 'adopt-option', adopt(study, 'C', {}))).toMatchObject({
      ok: false,
      fields: { alternative: expect.any(String) },
    })
  })
})

test('the entries of a study lead to it', async () => {
  const study = await open({ name: 'Eleven years', values: { 'service-years': 11 } }, { name: 'As it is' })
  await world.must('design', 'adopt-option', adopt(study, 'Eleven years', await seenNow('service-years')))
  const entries = await database().trailEntry.findMany({
    where: { command: { in: ['open-option-study', 'adopt-option'] } },
    orderBy: { seq: 'desc' },
    take: 2,
  })
  const place = { kind: 'study', number: study }
  expect(entries.map((entry) => entryTold(entry)?.leads)).toEqual([place, place])
})
