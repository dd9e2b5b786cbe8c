import { afterAll, beforeAll, expect, test } from 'vitest'
import type { InputOf } from '@/lib/commands/all-commands'
import { database } from '@/lib/db/client'
import { correctionsOf } from '@/lib/queries/corrections'
import { entryTold } from '@/shared/commands/entry-told'
import { concessionFor, concessionStatus } from '@/shared/gate/concession'
import type { Finding } from '@/shared/rules/finding'
import { grant, judgedNow } from '@/tests/commands/way-through'
import { openWorld, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

/* A relay board of its own: lots with blanks, and departures asked for before and after the fact. */
let db: FreshDatabase
let world: World
beforeAll(async () => {
  db = await freshDatabase()
  world = await openWorld()
  await world.must('quality', 'add-supplier', { supplier: SUPPLIER })
})
afterAll(() => db.drop())

const SUPPLIER = 'A supplier'
const works = { kind: 'supplier' as const, code: SUPPLIER }
const RULE = 'supplier-results-reaffirmed'
const reason = 'It stood on the delivery note.'

async function receive(code: string, supplierResult = ''): Promise<InputOf<'receive-lot'>> {
  const lot = {
    supplier: SUPPLIER,
    code,
    kind: 'component',
    part: 'relay RY1',
    dateCode: '',
    quantity: 40,
    receivedOn: '2026-01-05',
    temperatureC: 21,
    relativeHumidityPct: 45,
    packing: 'tubes',
    supplierResult,
  } as const
  await world.must('quality', 'receive-lot', lot)
  await world.must('quality', 'allocate-lot', {
    supplier: SUPPLIER,
    lot: code,
    to: world.code,
    quantity: 40,
    outOfOrder: 'Both are wanted.',
  })
  return lot
}

const corrected = (
  { code, ...values }: InputOf<'receive-lot'>,
  over: Partial<InputOf<'receive-lot'>>,
  seen = 0,
): InputOf<'correct-lot'> => {
  const cells = Object.entries({ ...values, ...over }).filter(([, cell]) => cell !== '')
  return {
    works,
    lot: code,
    values: Object.fromEntries(cells) as InputOf<'correct-lot'>['values'],
    seen,
    reason,
  }
}

const findingOf = async (rule: string): Promise<Finding> => {
  const finding = (await judgedNow(world)).judgement.findings.get(rule)
  if (!finding) throw new Error(`No finding of ${rule}.`)
  return finding
}
const itemOf = async (rule: string): Promise<string> =>
  (await judgedNow(world)).state.items.find(({ definition }) =>
    definition.rules.some(({ id }) => id === rule),
  )?.definition.key ?? ''
const letPass = async (rule: string): Promise<number | undefined> => {
  const { state } = await judgedNow(world)
  return concessionFor(await findingOf(rule), await itemOf(rule), state)?.number
}

test('a supplier’s result left blank is no dead end: the lot is corrected, and both texts stand', async () => {
  const lot = await receive('RY-1')
  expect(await findingOf(RULE)).toMatchObject({
    verdict: 'undetermined',
    missing: expect.arrayContaining([expect.stringMatching(/./)]),
  })
  const done = await world.must(
    'production',
    'correct-lot',
    corrected(lot, { supplierResult: '98 % covered' }),
  )

  const { state } = await judgedNow(world)
  expect(state.facts.records.lots[0]).toMatchObject({ code: 'RY-1', supplierResult: '98 % covered' })
  const row = await database().lot.findFirstOrThrow({ where: { code: 'RY-1' } })
  expect(row.supplierResult).toBe('')
  const [correction] = (await correctionsOf([row.id])).get(row.id) ?? []
  expect(correction).toMatchObject({ reason, byName: 'Test production', number: 1 })
  const told = entryTold(await database().trailEntry.findFirstOrThrow({ where: { hash: done.hash } }))
  expect(told).toMatchObject({
    subject: 'lot RY-1',
    what: 'Supplier’s own result: blank → 98 % covered',
    words: reason,
  })
})

test('whoever corrects what was corrected meanwhile is told so, and nothing is corrected to itself', async () => {
  const lot = await receive('RY-2')
  await world.must('quality', 'correct-lot', corrected(lot, { quantity: 50 }))
  expect(await world.as('production', 'correct-lot', corrected(lot, { quantity: 60 }))).toMatchObject({
    ok: false,
    message: expect.stringContaining('corrected meanwhile by Test quality'),
  })
  expect(await world.as('production', 'correct-lot', corrected(lot, { quantity: 50 }, 1))).toMatchObject({
    ok: false,
    message: expect.stringContaining('Nothing differs'),
  })
  expect(await world.as('production', 'correct-lot', corrected(lot, { quantity: 0 }, 1))).toMatchObject({
    ok: false,
    fields: { 'values.quantity': expect.stringContaining('Quantity lies between') },
  })
})

test('a concession on what is missing holds while just that is missing', async () => {
  const item = await itemOf(RULE)
  const lot = await receive('RY-3')
  const { result } = await world.must('secondProduction', 'request-concession', {
    programme: world.code,
    item,
    rule: RULE,
    why: 'None was agreed with this supplier.',
    quantity: 20,
    untilOn: null,
  })
  await grant(world, result.concession)
  expect(await letPass(RULE)).toBe(result.concession)

  await world.must('quality', 'correct-lot', corrected(lot, { supplierResult: 'none agreed' }))
  expect(await letPass(RULE)).toBeUndefined()
})

test('a deviation asked for beforehand covers what comes within it, and nothing beyond', async () => {
  const rule = 'lots-traced'
  const item = await itemOf(rule)
  const { result } = await world.must('secondProduction', 'request-deviation', {
    programme: world.code,
    item,
    rule,
    departure: { kind: 'parts', way: 'fails', parts: ['relay RY9'] },
    why: 'Ten boards are built from the rejected lot to train on.',
    quantity: 10,
    untilOn: null,
  })
  await grant(world, result.concession)
  expect(await letPass(rule)).toBeUndefined()

  await rejectedInto('RY-9', 'relay RY9', 'SN-1')
  expect((await findingOf(rule)).verdict).toBe('fails')
  const failing = ((await findingOf(rule)).parts ?? []).filter(({ verdict }) => verdict === 'fails')
  const { state, judgement } = await judgedNow(world)
  const permit = state.concessions.find(({ number }) => number === result.concession)!
  expect(concessionStatus(permit, judgement.findings.get(rule), state.facts)).toBe('granted')
  expect(failing.map(({ subject }) => subject).join()).toContain('RY9')
  const others = ((await findingOf(rule)).parts ?? []).filter(({ verdict }) => verdict === 'undetermined')
  expect(await letPass(rule)).toBe(others.length === 0 ? result.concession : undefined)

  await rejectedInto('RX-1', 'relay RX1', 'SN-2')
  expect(await letPass(rule)).toBeUndefined()
})

async function rejectedInto(code: string, part: string, serial: string): Promise<void> {
  await receive(code, 'wetted')
  const lot = await database().lot.findFirstOrThrow({ where: { code } })
  await world.must('quality', 'correct-lot', {
    works,
    lot: code,
    values: {
      kind: 'component',
      part,
      supplier: lot.supplier,
      quantity: lot.quantity,
      receivedOn: lot.receivedOn,
      temperatureC: 21,
      relativeHumidityPct: 45,
      packing: 'tubes',
      supplierResult: 'wetted',
    },
    seen: 0,
    reason,
  })
  await world.must('quality', 'dispose-lot', { works, lot: code, verdict: 'reject', reason })
  await world.must('production', 'trace-lot', { programme: world.code, lot: code, assemblies: [serial] })
}

test('a permit departs from a limit that the check reads, to a looser value', async () => {
  const rule = 'lots-traced'
  const asked = (departure: InputOf<'request-deviation'>['departure']) => ({
    programme: world.code,
    item: 'holes',
    rule,
    departure,
    why: 'w',
    quantity: 1,
    untilOn: null,
  })
  expect(
    await world.as('design', 'request-deviation', asked({ kind: 'parts', way: 'fails', parts: [] })),
  ).toMatchObject({ ok: false })
  expect(
    await world.as('design', 'request-deviation', {
      ...asked({ kind: 'limit', limit: 'nothing', value: 3 }),
      item: await itemOf(rule),
    }),
  ).toMatchObject({ ok: false, fields: { 'departure.limit': expect.stringMatching(/./) } })
})

test('an inspection and a soldering run before the gates are open say so in the trail', async () => {
  const done = await world.must('quality', 'record-inspection', {
    programme: world.code,
    inspections: [
      {
        assembly: 'SN-1',
        inspectedOn: '2026-01-07',
        inspector: 'An inspector',
        magnification: 4,
        jointsSeen: 424,
        defects: [],
        note: '',
      },
    ],
  })
  const entry = await database().trailEntry.findFirstOrThrow({ where: { hash: done.hash } })
  expect(JSON.parse(entry.payload)).toMatchObject({ gatesShut: ['specification', 'evaluation', 'control'] })
  expect(entryTold(entry)?.what).toContain(
    'while the specification, evaluation and control gates were not open',
  )

  const run = await world.must('production', 'add-record', {
    programme: world.code,
    kind: 'soldering-run',
    rows: [
      {
        doneOn: '2026-01-06',
        worker: 'A worker',
        skill: 'hand-soldering',
        assemblies: 2,
        serials: 'SN-1, SN-2',
      },
    ],
  })
  const told = await database().trailEntry.findFirstOrThrow({ where: { hash: run.hash } })
  expect(JSON.parse(told.payload)).toMatchObject({ gatesShut: ['specification', 'evaluation'] })
})
