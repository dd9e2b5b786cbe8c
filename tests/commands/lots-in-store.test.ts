import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { database } from '@/lib/db/client'
import { judgedProgramme } from '@/lib/programme/judged'
import { readSupplier } from '@/lib/queries/works/suppliers'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import { acceptableQualityLevel, inspectionLevel } from '@/shared/plan/parameters/evaluation-sampling'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import { inspectionState } from '@/shared/rules/evaluation/inspection-state'
import { rotaryDipWettingTime } from '@/shared/rules/evaluation/rotary-dip-wetting-time'
import type { JsonValue } from '@/shared/trail/canonical-json'
import { boardConditions, needed, times } from '@/tests/rules/lots-builder'
import { openWorld, programmeInput, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'
import { statementsOf } from '@/tests/setup/statements-of'

/*
 * One supplier of boards, whose lots go to several programmes, or to none. All names, dates and quantities are made up.
 */

const PART = 'bare board LX-41'
const SUPPLIER = 'Northgate Circuits'
const works = { kind: 'supplier' as const, code: SUPPLIER }
const reason = 'Because the test needs it.'

let db: FreshDatabase
let world: World
let instrument: string
let code: { one: string; two: string; unlike: string }
beforeAll(async () => {
  db = await freshDatabase()
  world = await openWorld()
  code = { one: world.code, two: `${world.code}-B`, unlike: `${world.code}-C` }
  await world.must('quality', 'add-supplier', { supplier: SUPPLIER })
  instrument = (
    await world.must('administrator', 'add-instrument', {
      tag: 'T-07',
      measures: 'time',
      calibratedOn: '2026-01-01',
      dueOn: '2027-01-01',
      certificate: 'C-1',
    })
  ).result.instrument
  for (const programme of [code.two, code.unlike])
    await world.must('lead', 'open-programme', programmeInput(programme))
  await specify(code.one)
  await specify(code.two)
  await specify(code.unlike, { flux: 'rosin-activated-0.2' })
})
afterAll(() => db.drop())

async function specify(programme: string, over: Partial<typeof boardConditions> | object = {}) {
  const values: Readonly<Record<string, unknown>> = {
    [lotsNeeded.key]: [needed(PART, 'bare board', 'rotary-dip')],
    [testConditions.key]: [{ method: 'rotary-dip', ...boardConditions, ...over }],
    [inspectionLevel.key]: 'S-3',
    [acceptableQualityLevel.key]: '1.0',
  }
  if (programme !== world.code) await join(programme)
  for (const [parameter, value] of Object.entries(values))
    await world.must('quality', 'revise-parameter', {
      programme,
      parameter,
      value: value as JsonValue,
      seen: 0,
      reason,
    })
}

async function join(programme: string): Promise<void> {
  for (const department of ['production', 'quality'] as const) {
    const { email } = await database().person.findUniqueOrThrow({ where: { id: world.person[department] } })
    await world.must('lead', 'invite-member', { programme, email, department })
  }
}

const receive = (lot: string, receivedOn: string, over: { part?: string; expiresOn?: string } = {}) =>
  world.must('quality', 'receive-lot', {
    supplier: SUPPLIER,
    code: lot,
    kind: 'bare board',
    part: PART,
    dateCode: '',
    quantity: 200,
    receivedOn,
    temperatureC: 22,
    relativeHumidityPct: 45,
    packing: 'sealed',
    supplierResult: '',
    ...over,
  })

/** Twenty specimens, each with one place; of a bad lot one takes 5 s. */
const dip = (lot: string, testedOn: string, outcome: 'good' | 'bad') =>
  world.must('quality', 'test-lot', {
    works,
    lot,
    method: 'rotary-dip',
    testedOn,
    testedBy: 'A tester',
    instrument,
    conditions: boardConditions,
    readings: {
      count: 20,
      columns: {
        specimen: times(20, '').map((_, at) => `s${at + 1}`),
        place: times(20, 'track'),
        outcome: times(20, 'wetted'),
        wettingTimeS: [...times(19, 1), outcome === 'good' ? 1 : 5],
      },
    },
    file: null,
  })

const allocate = (lot: string, to: string, quantity: number, outOfOrder = '') =>
  world.as('production', 'allocate-lot', { supplier: SUPPLIER, lot, to, quantity, outOfOrder })

const judged = async (programme: string) => {
  const found = await judgedProgramme(programme)
  if (!found) throw new Error(`There is no programme ${programme}.`)
  return found
}
const finding = async (programme: string, rule: string) =>
  (await judged(programme)).judgement.findings.get(rule)!
const lotsOf = async (programme: string) => (await judged(programme)).state.facts.records.lots

describe('what is left in store', () => {
  const part = { part: 'relay RY1' }
  test('is what was received without what programmes hold; more is refused, what came back can go elsewhere', async () => {
    await receive('R-1', '2026-01-05', part)
    const first = await allocate('R-1', code.one, 120)
    expect(first).toMatchObject({ ok: true })
    expect(await allocate('R-1', code.two, 81)).toMatchObject({
      ok: false,
      fields: { quantity: 'At most 80.' },
    })
    expect(await allocate('R-1', code.two, 80)).toMatchObject({ ok: true })
    expect(await allocate('R-1', code.two, 1)).toMatchObject({
      ok: false,
      message: expect.stringMatching(/^Nothing/),
    })
    const allocation = first.ok ? first.result.allocation : ''
    const giveBack = (quantity: number) =>
      world.as('production', 'return-allocation', { supplier: SUPPLIER, allocation, quantity, reason })
    expect(await giveBack(121)).toMatchObject({ ok: false, fields: { quantity: 'At most 120.' } })
    expect(await giveBack(50)).toMatchObject({ ok: true })
    expect(await giveBack(71)).toMatchObject({ ok: false, fields: { quantity: 'At most 70.' } })
    expect(await allocate('R-1', code.two, 50)).toMatchObject({ ok: true })
    expect((await lotsOf(code.one)).find((lot) => lot.code === 'R-1')?.atWorks).toEqual({
      supplier: SUPPLIER,
      lot: 'R-1',
      allocated: 70,
    })
    const smaller = {
      kind: 'bare board',
      supplier: SUPPLIER,
      ...part,
      quantity: 199,
      receivedOn: '2026-01-05',
    }
    expect(
      await world.as('quality', 'correct-lot', {
        works,
        lot: 'R-1',
        values: { ...smaller, temperatureC: 22, relativeHumidityPct: 45, packing: 'sealed' },
        seen: 0,
        reason,
      }),
    ).toMatchObject({ ok: false, fields: { 'values.quantity': 'At least 200.' } })
    expect(await giveBack(70)).toMatchObject({ ok: true })
    expect((await lotsOf(code.one)).map((lot) => lot.code)).not.toContain('R-1')
  })

  test('first expired, first used: another lot of the part is named, unless a reason is given; a rejected one is refused', async () => {
    const relay = { part: 'relay RY2' }
    await receive('E-late', '2026-01-05', { ...relay, expiresOn: '2099-12-31' })
    await receive('E-soon', '2026-01-07', { ...relay, expiresOn: '2099-06-30' })
    await receive('E-past', '2026-01-06', { ...relay, expiresOn: '2026-02-01' })
    expect(await allocate('E-late', code.one, 10)).toMatchObject({
      ok: false,
      message: expect.stringContaining('E-soon'),
      fields: { outOfOrder: expect.any(String) },
    })
    expect(await allocate('E-past', code.one, 10)).toMatchObject({
      ok: false,
      message: expect.stringContaining('2026-02-01'),
    })
    expect(await allocate('E-late', code.one, 10, 'The customer asked for this date code.')).toMatchObject({
      ok: true,
    })
    expect(await allocate('E-soon', code.one, 200)).toMatchObject({ ok: true })
    expect(await allocate('E-late', code.two, 10)).toMatchObject({ ok: true })
    await world.must('quality', 'dispose-lot', { works, lot: 'E-late', verdict: 'reject', reason })
    expect(await allocate('E-late', code.two, 1, 'All the same.')).toMatchObject({
      ok: false,
      message: expect.stringContaining('rejected'),
    })
  })
})

test('two suppliers’ lots of one code are told apart in a programme, and each assembly is in the uses of its own programme', async () => {
  await world.must('quality', 'add-supplier', { supplier: 'Southgate' })
  const twin = { code: 'R-1', part: 'relay RY3', kind: 'component' as const }
  await receive('R-2', '2026-01-05', { part: 'relay RY3' })
  await world.must('quality', 'receive-lot', {
    supplier: 'Southgate',
    ...twin,
    dateCode: '',
    quantity: 10,
    receivedOn: '2026-01-05',
    temperatureC: 22,
    relativeHumidityPct: 45,
    packing: 'sealed',
    supplierResult: '',
  })
  await world.must('production', 'allocate-lot', {
    supplier: 'Southgate',
    lot: 'R-1',
    to: code.two,
    quantity: 5,
    outOfOrder: reason,
  })
  expect((await lotsOf(code.two)).map((lot) => lot.code)).toEqual(
    expect.arrayContaining(['R-1', 'R-1 · Southgate']),
  )
  const trace = (programme: string, lot: string, assemblies: string[]) =>
    world.must('production', 'trace-lot', { programme, lot, assemblies })
  await allocate('R-2', code.one, 5)
  await allocate('R-2', code.two, 5)
  await trace(code.one, 'R-2', ['SN-1', 'SN-2'])
  await trace(code.two, 'R-2', ['SN-1'])
  await trace(code.two, 'R-1 · Southgate', ['SN-7'])
  const uses = async (programme: string, lot: string) =>
    (await lotsOf(programme)).find((one) => one.code === lot)?.usedIn
  expect(await uses(code.one, 'R-2')).toEqual(['SN-1', 'SN-2'])
  expect(await uses(code.two, 'R-2')).toEqual(['SN-1'])
  expect(await uses(code.two, 'R-1 · Southgate')).toEqual(['SN-7'])
})

// MIL-STD-105E 4.7 (read in a reproduction): two of five or fewer consecutive lots rejected on original inspection tighten it.
describe('the series of a supplier’s lots of one part', () => {
  test('runs over all of them: lots of one programme and of none tighten the sampling of another', async () => {
    await receive('B-01', '2026-02-01')
    await receive('B-02', '2026-02-02')
    await receive('B-03', '2026-02-03')
    expect(await allocate('B-01', code.one, 200)).toMatchObject({ ok: true })
    expect(await allocate('B-03', code.two, 200, reason)).toMatchObject({ ok: true })
    await dip('B-03', '2026-02-05', 'good')
    const state = async () => (await finding(code.two, inspectionState.id)).parts?.[0]?.measured
    expect(await state()).toMatchObject({ inspection: 'normal' })
    await dip('B-01', '2026-02-05', 'bad')
    expect(await state()).toMatchObject({ inspection: 'normal' })
    await dip('B-02', '2026-02-05', 'bad')
    expect(await state()).toMatchObject({ inspection: 'tightened' })
    const { parts = [] } = await finding(code.two, rotaryDipWettingTime.id)
    expect(parts.map(({ about }) => about?.['lot'])).toEqual(['B-03'])
    const { deliveries } = (await judged(code.two)).state.facts.records
    expect(deliveries.filter(({ part }) => part === PART).map((lot) => lot.code)).toEqual(['B-01', 'B-02'])
  })

  test('counts what a programme recorded of the same supplier and part before the works kept lots', async () => {
    const { id } = await database().programme.findUniqueOrThrow({ where: { code: code.one } })
    await database().lot.create({
      data: {
        id: '019a0000-0000-7000-8000-000000000001',
        trailId: id,
        code: 'B-03',
        kind: 'bare board',
        part: ` ${PART.toUpperCase()}`,
        supplier: 'northgate  circuits',
        dateCode: '',
        quantity: 200,
        receivedOn: '2026-02-04',
        storage: { temperatureC: 22, relativeHumidityPct: 45, packing: 'sealed' },
        supplierResult: '',
        addedById: world.person.quality,
        at: new Date('2026-02-04T08:00:00Z'),
      },
    })
    // It stands in the programme, where it goes on being tested; the other programme reads it under that name.
    const { conditions, readings } = (await judged(code.one)).state.facts.records.lots.find(
      (lot) => lot.code === 'B-01',
    )!.tests[0]!
    await world.must('quality', 'test-lot', {
      programme: code.one,
      lot: 'B-03',
      method: 'rotary-dip',
      testedOn: '2026-02-06',
      testedBy: 'A tester',
      instrument,
      conditions: conditions as Record<string, string>,
      readings: { ...readings, columns: { ...readings.columns } } as never,
      file: null,
    })
    const other = (await judged(code.two)).state.facts.records.deliveries
    expect(other.map((lot) => lot.code)).toEqual(expect.arrayContaining([`B-03 · ${code.one}`]))
    // The supplier's page tells of it too, though it is worked on in the programme.
    expect((await readSupplier(SUPPLIER))?.recordedBefore).toMatchObject([
      { code: 'B-03', programme: code.one, disposition: null },
    ])
    expect((await finding(code.two, inspectionState.id)).parts?.[0]?.measured).toMatchObject({
      decided: { value: 4 },
      rejected: { value: 3 },
    })
  })

  test('a lot tested under another programme’s conditions does not fail this one, and is said not to count', async () => {
    await allocate('B-02', code.unlike, 100, reason)
    const { verdict, parts = [] } = await finding(code.unlike, rotaryDipWettingTime.id)
    expect(verdict).toBe('undetermined')
    expect(parts[0]?.found).toContain('conditions unlike the specified ones')
  })

  test('what a supplier did is read wherever it was recorded, and only by programmes with its lots', async () => {
    await world.must('quality', 'add-record', {
      works,
      kind: 'supplier-action',
      rows: [
        { supplier: SUPPLIER, part: PART, action: 'A new bath.', acceptedOn: '2026-02-10' } as Record<
          string,
          string
        >,
      ],
    })
    const actions = async (programme: string) =>
      (await judged(programme)).state.facts.records.byKind.get('supplier-action')?.length ?? 0
    expect(await actions(code.two)).toBe(1)
    await world.must('lead', 'open-programme', programmeInput(`${code.one}-D`))
    expect(await actions(`${code.one}-D`)).toBe(0)
  })
})

test('the statements a programme needs do not grow with the lots of its suppliers', async () => {
  const statements = async () => {
    await world.must('lead', 'add-comment', {
      programme: code.two,
      about: { kind: 'parameter', key: 'service-years' },
      text: 'Judge again.',
      mentions: [],
    })
    return statementsOf(() => judged(code.two))
  }
  const few = await statements()
  for (let day = 10; day < 22; day++) {
    await receive(`M-${day}`, `2026-02-${day}`)
    await allocate(`M-${day}`, day % 2 ? code.one : code.two, 20, reason)
  }
  expect(await statements()).toBe(few)
})
