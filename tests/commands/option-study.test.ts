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
    costs: [{ kind: 'piece' as const, amount: 1 }],
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
  revision: 1,
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
      amounts: [{ kind: 'piece', amount: 2 }],
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

describe('a study over several items', () => {
  const spanning = (): InputOf<'open-option-study'> => ({
    programme: world.code,
    item: 'laminate',
    title: 'Which laminate, finish and process together?',
    alternatives: [
      { name: 'As today', values: {} },
      {
        name: 'All three',
        values: {
          'board-thickness': 2.4,
          'board-finish': 'hot-air-tin-lead',
          'soldering-process': 'wave',
        },
        limits: [{ limit: 'magnification-most', authority: 'company', document: 'House rule 12', value: 4 }],
        costs: [{ kind: 'tooling', amount: '120 to 150' }],
      },
    ],
  })
  const openSpanning = async () => (await world.must('lead', 'open-option-study', spanning())).result.study
  const alternativesOf = async (number: number) =>
    (await database().optionStudy.findFirstOrThrow({ where: { number, programme: { code: world.code } } }))
      .alternatives as unknown as {
      name: string
      values: Record<string, unknown>
      changed: { byName: string; why: string }[]
      withdrawn: { why: string } | null
    }[]
  const change = (study: number, revision: number, thickness: number): InputOf<'change-alternative'> => ({
    programme: world.code,
    study,
    revision,
    name: 'All three',
    alternative: {
      name: 'All three',
      values: {
        'board-thickness': thickness,
        'board-finish': 'hot-air-tin-lead',
        'soldering-process': 'wave',
      },
      costs: [{ kind: 'piece', amount: null }],
    },
    reason: 'The supplier has it in stock.',
  })

  test('is revised while it is open, with who and why, and adopted with every item’s values and its limits at once', async () => {
    const study = await openSpanning()
    await world.must('production', 'change-alternative', change(study, 1, 3.2))
    await world.must('design', 'add-alternative', {
      programme: world.code,
      study,
      revision: 2,
      alternative: { name: 'Thin', values: { 'board-thickness': 0.8, 'annual-volume': 777 } },
      reason: 'For comparison.',
    })
    await world.must('quality', 'withdraw-alternative', {
      programme: world.code,
      study,
      revision: 3,
      name: 'As today',
      reason: 'Nobody wants it.',
    })
    const [asToday, all, thin] = await alternativesOf(study)
    expect(asToday?.withdrawn?.why).toBe('Nobody wants it.')
    expect(all?.changed).toMatchObject([{ why: 'The supplier has it in stock.' }])
    expect(thin?.values).toMatchObject({ 'board-thickness': 0.8, 'annual-volume': 777 })
    expect(all?.values['annual-volume'], 'today’s value is written down').toBeTypeOf('number')
    const told = entryTold(
      await database().trailEntry.findFirstOrThrow({
        where: { command: 'change-alternative' },
        orderBy: { at: 'desc' },
      }),
    )
    expect(told?.what).toContain('2.4 mm → 3.2 mm')
    expect(told?.what).toContain('piece cost not known')
    await world.must('lead', 'adopt-option', {
      ...adopt(study, 'All three', {}),
      revision: 4,
      seen: { 'annual-volume': (await newest('annual-volume')).number },
    })
    expect((await newest('board-thickness')).value).toBe(3.2)
    expect((await newest('board-finish')).value).toBe('hot-air-tin-lead')
    expect((await newest('soldering-process')).value).toBe('wave')
  })

  test('tells whoever read an earlier writing of it that it was revised', async () => {
    const study = await openSpanning()
    await world.must('production', 'change-alternative', change(study, 1, 1.6))
    expect(await world.as('design', 'change-alternative', change(study, 1, 2))).toMatchObject({
      ok: false,
      message: expect.stringContaining('was revised since you read it'),
    })
    expect(await world.as('lead', 'adopt-option', adopt(study, 'All three', {}))).toMatchObject({ ok: false })
  })

  test('draws on the answer to what was asked within it, of a person by name', async () => {
    const study = await openSpanning()
    const question = {
      programme: world.code,
      item: 'laminate',
      from: 'design' as const,
      to: 'production' as const,
      study,
      kind: 'cost' as const,
      question: 'What does each come to?',
      dueOn: '2099-01-01',
    }
    expect(
      await world.as('design', 'ask-action', { ...question, person: world.person.quality }),
    ).toMatchObject({
      ok: false,
      fields: { person: expect.stringContaining('does not belong to production') },
    })
    const { result } = await world.must('design', 'ask-action', {
      ...question,
      person: world.person.production,
    })
    const answer = (alternative: string): InputOf<'answer-action'> => ({
      programme: world.code,
      action: result.action,
      feasible: 'with changes',
      amounts: [
        { kind: 'piece', amount: '0.42', alternative },
        { kind: 'lead time', amount: '10..15' },
        { kind: 'tooling', amount: '' },
      ],
      comment: 'See the quotation.',
    })
    expect(await world.as('production', 'answer-action', answer('No such'))).toMatchObject({
      ok: false,
      fields: { 'amounts.0.alternative': expect.any(String) },
    })
    await world.must('production', 'answer-action', answer('All three'))
    const stored = await database().action.findFirstOrThrow({
      where: { number: result.action, programme: { code: world.code } },
    })
    expect(stored.answer).toMatchObject({
      amounts: [
        { kind: 'piece', per: 'board', amount: 0.42, alternative: 'All three' },
        { kind: 'lead time', per: null, amount: '10..15' },
        { kind: 'tooling', per: 'once', amount: null },
      ],
    })
    expect(
      await world.as('production', 'answer-action', {
        ...answer('All three'),
        amounts: [{ kind: 'piece', amount: 'about two' }],
      }),
    ).toMatchObject({ ok: false, fields: { 'amounts.0.amount': expect.stringContaining('120 to 150') } })
  })
})
