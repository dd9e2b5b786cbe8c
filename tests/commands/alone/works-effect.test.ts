import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { InputOf } from '@/lib/commands/all-commands'
import type { Previewed } from '@/lib/commands/considered/what-it-changes'
import { database } from '@/lib/db/client'
import { judgedProgramme, type JudgedProgramme } from '@/lib/programme/judged'
import { readTraining } from '@/lib/queries/people-of-the-works'
import { worksEffect } from '@/lib/queries/works/works-effect'
import { previewBetween, type ChangePreview } from '@/shared/gate/change-preview'
import type { WorksEffect } from '@/shared/gate/works-effect'
import { acceptableQualityLevel, inspectionLevel } from '@/shared/plan/parameters/evaluation-sampling'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import type { JsonValue } from '@/shared/trail/canonical-json'
import { partDigest } from '@/shared/works/part-content'
import { boardConditions, needed, times } from '@/tests/rules/lots-builder'
import { PART_VALUES, trainingInput } from '@/tests/commands/valid-inputs'
import { itemDigest, openWorld, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'
import { statementsOf } from '@/tests/setup/statements-of'

/*
 * What is said before is held against what then happens: each command is first asked about, then given, and the
 * programmes are loaded and judged anew from what the database holds. All names and numbers are made up.
 */

const SUPPLIER = 'Southgate Boards'
const PART = 'bare board LX-77'
const works = { kind: 'supplier' as const, code: SUPPLIER }
const people = { kind: 'people', code: 'people' } as const
const reason = 'Because the test needs it.'

let db: FreshDatabase
let one: World
let other: World
let bystander: World
let instrument: string
beforeAll(async () => {
  db = await freshDatabase()
  ;[one, other, bystander] = [await openWorld(), await openWorld(), await openWorld()]
  const { result } = await one.must('administrator', 'add-instrument', {
    tag: 'T-09',
    measures: 'time',
    calibratedOn: '2026-01-01',
    dueOn: '2027-01-01',
    certificate: 'C-1',
  })
  instrument = result.instrument
  await one.must('quality', 'add-supplier', { supplier: SUPPLIER })
})
afterAll(() => db.drop())

const told = ({ turned, moved, approvals, revived, gates, gateSignatures }: ChangePreview) => ({
  turned: turned.map(({ rule, before, after }) => `${rule}: ${before} → ${after}`).sort(),
  moved: moved.map(({ rule }) => rule).sort(),
  approvals: approvals.map(({ itemKey, department }) => `${itemKey} ${department}`).sort(),
  revived: revived.map(({ itemKey, department }) => `${itemKey} ${department}`).sort(),
  gates,
  gateSignatures,
})
const byCode = ({ programmes }: WorksEffect) =>
  Object.fromEntries(programmes.map(({ programme, preview }) => [programme.code, told(preview)]))

const judged = async (world: World): Promise<JudgedProgramme> => (await judgedProgramme(world.code))!
const entries = () => database().trailEntry.count()

/** Asks, gives the command, and compares what was said with what came; answers the effect. */
async function saidAndDone<N extends Previewed>(
  who: 'design' | 'production' | 'quality',
  name: N,
  input: InputOf<N>,
): Promise<WorksEffect> {
  const worlds = [one, other, bystander]
  const before = await Promise.all(worlds.map(judged))
  const stored = await entries()
  const effect = await worksEffect({ personId: one.person[who], auditor: false }, name, input)
  expect(await entries()).toBe(stored)
  expect(await Promise.all(worlds.map(judged))).toEqual(before)
  await one.must(who, name, input)
  const after = await Promise.all(worlds.map(judged))
  const came = worlds.flatMap(({ code }, at) => {
    const { state, judgement } = before[at]!
    const preview = told(previewBetween(state, judgement, after[at]!.judgement))
    return Object.values(preview).some((list) => list.length > 0) ? [[code, preview] as const] : []
  })
  expect(byCode(effect)).toEqual(Object.fromEntries(came))
  return effect
}

describe('a lot that one programme holds and whose series another reads', () => {
  beforeAll(async () => {
    for (const world of [one, other]) {
      const values: Readonly<Record<string, unknown>> = {
        [lotsNeeded.key]: [needed(PART, 'bare board', 'rotary-dip')],
        [testConditions.key]: [{ method: 'rotary-dip', ...boardConditions }],
        [inspectionLevel.key]: 'S-3',
        [acceptableQualityLevel.key]: '1.0',
      }
      for (const [parameter, value] of Object.entries(values))
        await world.must('quality', 'revise-parameter', {
          programme: world.code,
          parameter,
          value: value as JsonValue,
          seen: 0,
          reason,
        })
    }
    for (const [lot, world, receivedOn] of [
      ['S-0', one, '2026-01-30'],
      ['S-1', one, '2026-02-01'],
      ['S-2', other, '2026-02-02'],
    ] as const) {
      await one.must('quality', 'receive-lot', {
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
      })
      await one.must('production', 'allocate-lot', {
        supplier: SUPPLIER,
        lot,
        to: world.code,
        quantity: 200,
        outOfOrder: 'Each its own.',
      })
    }
    await one.must('quality', 'test-lot', dip('S-0', true))
    await one.must('quality', 'dispose-lot', { works, lot: 'S-0', verdict: 'reject', reason })
  })

  const dip = (lot: string, slow: boolean): InputOf<'test-lot'> => ({
    works,
    lot,
    method: 'rotary-dip',
    testedOn: '2026-02-10',
    testedBy: 'A tester',
    instrument,
    conditions: boardConditions,
    readings: {
      count: 20,
      columns: {
        specimen: times(20, '').map((_, at) => `s${at + 1}`),
        place: times(20, 'track'),
        outcome: times(20, 'wetted'),
        wettingTimeS: [...times(19, 1), slow ? 5 : 1],
      },
    },
    file: null,
  })

  test('its test is told for each before it is recorded', async () => {
    const effect = await saidAndDone('quality', 'test-lot', dip('S-1', true))
    expect(effect.looked).toBe(2)
    // ISO 2859-1:1999, 9.3.1: two of five consecutive lots not accepted, and inspection is tightened.
    const { turned = [], moved = [] } = byCode(effect)[other.code] ?? {}
    expect([...turned, ...moved].join()).toContain('inspection-state')
  })
  test('so is its rejection, and the test withdrawn', async () => {
    const effect = await saidAndDone('quality', 'dispose-lot', {
      works,
      lot: 'S-1',
      verdict: 'reject',
      reason,
    })
    expect(Object.keys(byCode(effect))).toContain(one.code)
    const { id } = await database().lotTest.findFirstOrThrow({ where: { lot: { code: 'S-1' } } })
    await saidAndDone('quality', 'withdraw-lot-test', { works, test: id, reason })
  })
  test('what the command would refuse is refused in the same words, and nothing is kept', async () => {
    const input = { works, lot: 'S-1', verdict: 'use under concession' as const, reason }
    const refused = await one.as('quality', 'dispose-lot', input)
    const asked = worksEffect({ personId: one.person.quality, auditor: false }, 'dispose-lot', input)
    await expect(asked).rejects.toThrow(refused.ok ? '' : refused.message)
    const theirs = await one.as('design', 'dispose-lot', input)
    const notMine = worksEffect({ personId: one.person.design, auditor: false }, 'dispose-lot', input)
    await expect(notMine).rejects.toThrow(theirs.ok ? '' : theirs.message)
  })
})

describe('training', () => {
  const WORKER = 'Hedda Quist'
  beforeAll(async () => {
    for (const world of [one, other])
      await world.must('production', 'add-record', {
        programme: world.code,
        kind: 'soldering-run',
        rows: [{ doneOn: '2026-03-02', worker: WORKER, skill: 'hand-soldering', assemblies: 4 }],
      })
  })

  test('added, corrected and withdrawn is told for every programme that the person solders in', async () => {
    const held = trainingInput({ worker: WORKER, passedOn: '2026-02-01', expiresOn: '2027-01-31' })
    const added = await saidAndDone('production', 'add-record', held)
    expect(Object.keys(byCode(added))).toEqual(expect.arrayContaining([one.code, other.code]))
    const { id, worker, skill, passedOn, certificate } = (await readTraining()).at(-1)!
    const lapsed = { worker, skill, passedOn, certificate, expiresOn: '2026-03-01' }
    const corrected = await saidAndDone('production', 'correct-record', {
      works: people,
      record: id,
      values: lapsed,
      seen: 0,
      reason,
    })
    expect(byCode(corrected)[other.code]?.turned.join()).toMatch(/trained-people: \w+ → fails/)
    await saidAndDone('production', 'withdraw-record', { works: people, record: id, reason })
  })
})

describe('a part that two programmes list', () => {
  const part = `P-${randomUUID().slice(0, 8)}`
  const thicker = { ...PART_VALUES, leadMm: 0.7 }
  beforeAll(async () => {
    await one.must('design', 'describe-part', { code: part, values: PART_VALUES, reason })
    for (const world of [one, other])
      await world.must('lead', 'revise-parameter', {
        programme: world.code,
        parameter: 'parts-list',
        value: [{ references: 'R1', part, quantity: 1, soldered: 'machine' }],
        seen: 0,
        reason,
      })
  })

  test('approved, revised, and given back the approved values', async () => {
    await saidAndDone('quality', 'approve-part', { part, digest: partDigest(part, PART_VALUES) })
    await one.must('production', 'revise-parameter', {
      programme: one.code,
      parameter: 'solder-exposures',
      value: [{ step: 'Wave', kind: 'wave', temperatureC: 250, seconds: 4, times: 1 }],
      seen: 0,
      reason,
    })
    await one.must('design', 'approve-item', {
      programme: one.code,
      item: 'parts-list',
      department: 'design',
      digest: await itemDigest(one.code, 'parts-list'),
    })
    const revised = await saidAndDone('design', 'revise-part', { part, values: thicker, seen: 1, reason })
    expect(Object.keys(byCode(revised)).sort()).toEqual([one.code, other.code].sort())
    expect(byCode(revised)[one.code]?.approvals).toEqual(['parts-list design'])
    const back = await saidAndDone('design', 'revise-part', { part, values: PART_VALUES, seen: 2, reason })
    expect(byCode(back)[one.code]?.revived).toEqual(['parts-list design'])
  })
  test('withdrawn, and taken back into use with the approval it had', async () => {
    const effect = await saidAndDone('design', 'withdraw-part', { part, reason })
    expect(byCode(effect)[other.code]?.turned.join()).toContain('parts-described')
    const back = await saidAndDone('quality', 'reinstate-part', { part, reason })
    expect(byCode(back)[other.code]?.turned.join()).toMatch(/parts-described: fails → meets/)
  })
})

test('a company rule turns nothing by itself, and is told as if each programme took it over', async () => {
  const rule = {
    limit: 'magnification-most',
    value: 4,
    document: 'Handbook',
    edition: '1',
    clause: '1',
    reason,
  }
  const quality = { personId: one.person.quality, auditor: false }
  const effect = await worksEffect(quality, 'state-company-rule', rule)
  expect(effect).toMatchObject({ onceTaken: true, looked: 1 })
  const before = await judged(one)
  const { result } = await one.must('quality', 'state-company-rule', rule)
  expect(await judged(one)).toBe(before)
  await one.must('quality', 'take-company-rule', {
    programme: one.code,
    rule: result.rule,
    standing: 'stated',
  })
  const after = await judged(one)
  const came = told(previewBetween(before.state, before.judgement, after.judgement))
  const none = Object.values(came).every((list) => list.length === 0)
  expect(byCode(effect)).toEqual(none ? {} : { [one.code]: came })
  const gone = await worksEffect(quality, 'withdraw-company-rule', { rule: result.rule, reason })
  const back = told(previewBetween(after.state, after.judgement, before.judgement))
  expect(byCode(gone)).toEqual(
    Object.values(back).every((list) => list.length === 0) ? {} : { [one.code]: back },
  )
})

test('asking takes as many statements for three programmes as for six', async () => {
  const ask = () =>
    worksEffect({ personId: one.person.production, auditor: false }, 'add-record', trainingInput())
  await ask()
  const few = await statementsOf(ask)
  for (let more = 0; more < 3; more++) await openWorld()
  await ask()
  const many = await statementsOf(ask)
  expect(many).toBe(few)
})
