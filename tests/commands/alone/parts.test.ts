import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { database } from '@/lib/db/client'
import { judgedProgramme } from '@/lib/programme/judged'
import { verdictOnStored } from '@/lib/trail/verify-stored'
import { itemStateFor } from '@/shared/gate/judgement'
import { partDigest } from '@/shared/works/part-content'
import { PART_VALUES } from '@/tests/commands/valid-inputs'
import { openWorld, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

const reason = 'Because the test needs it.'

let db: FreshDatabase
let first: World
let second: World
let apart: World
beforeAll(async () => {
  db = await freshDatabase()
  ;[first, second, apart] = [await openWorld(), await openWorld(), await openWorld()]
})
afterAll(() => db.drop())

/** A part that design describes, and quality approves. */
async function approvedPart(): Promise<string> {
  const part = `P-${randomUUID().slice(0, 8)}`
  await first.must('design', 'describe-part', { code: part, values: PART_VALUES, reason })
  await approve(part, PART_VALUES)
  return part
}
const approve = (part: string, values: typeof PART_VALUES) =>
  first.must('quality', 'approve-part', { part, digest: partDigest(part, values) })
const revise = (part: string, values: typeof PART_VALUES, seen: number) =>
  first.must('design', 'revise-part', { part, values, seen, reason })

async function list(world: World, part: string): Promise<void> {
  const seen = await database().revision.count({
    where: { parameter: 'parts-list', programme: { code: world.code } },
  })
  await world.must('lead', 'revise-parameter', {
    programme: world.code,
    parameter: 'parts-list',
    value: [{ references: 'R1', part, quantity: 1, soldered: 'machine' }],
    seen,
    reason,
  })
}
async function judged(world: World) {
  const found = await judgedProgramme(world.code)
  if (!found) throw new Error(`There is no programme ${world.code}.`)
  return found
}
const described = async (world: World) =>
  (await judged(world)).judgement.findings.get('parts-described')?.verdict

describe('a part that two programmes list', () => {
  let part: string
  beforeAll(async () => {
    part = await approvedPart()
    for (const world of [first, second]) await list(world, part)
    await list(apart, await approvedPart())
  })

  test('turns the findings of both when it is revised, and of no other, which is not even judged again', async () => {
    expect(await Promise.all([first, second, apart].map(described))).toEqual(['meets', 'meets', 'meets'])
    const before = await judged(apart)
    await revise(part, { ...PART_VALUES, leadMm: 0.7 }, 1)
    expect(await Promise.all([first, second, apart].map(described))).toEqual([
      'undetermined',
      'undetermined',
      'meets',
    ])
    expect(await judged(apart)).toBe(before)
  })
  test('turns them back when the newest values are approved, or are again what was approved', async () => {
    await revise(part, PART_VALUES, 2)
    expect(await described(second)).toBe('meets')
    await revise(part, { ...PART_VALUES, leadMm: 0.8 }, 3)
    expect(await described(second)).toBe('undetermined')
    await approve(part, { ...PART_VALUES, leadMm: 0.8 })
    expect(await described(second)).toBe('meets')
  })
  test('lapses the approval of the parts by its values, though no finding turned', async () => {
    const digest = async () => itemStateFor((await judged(first)).judgement, 'parts-list')?.digest
    const [before, holes] = [
      await digest(),
      itemStateFor((await judged(first)).judgement, 'holes-and-lands')?.digest,
    ]
    const values = { ...PART_VALUES, leadMm: 0.8, note: 'Another maker as well' }
    await revise(part, values, 4)
    await approve(part, values)
    expect(await described(first)).toBe('meets')
    expect(await digest()).not.toBe(before)
    expect(itemStateFor((await judged(first)).judgement, 'holes-and-lands')?.digest).toBe(holes)
  })
  test('fails them when it is withdrawn, and takes no more revisions', async () => {
    await first.must('design', 'withdraw-part', { part, reason })
    expect(await Promise.all([first, second, apart].map(described))).toEqual(['fails', 'fails', 'meets'])
    expect(
      await first.as('design', 'revise-part', { part, values: PART_VALUES, seen: 5, reason }),
    ).toMatchObject({ ok: false, message: expect.stringContaining('is withdrawn') })
  })
  test('is whole in its trail', async () => {
    const { id } = await database().part.findUniqueOrThrow({ where: { code: part } })
    expect((await verdictOnStored(id)).stored.breaks).toEqual([])
  })
})

test('a part that is only proposed, in a change notice, is known to the judgement, and its revisions too', async () => {
  const part = await approvedPart()
  const before = await judged(apart)
  const { result } = await apart.must('lead', 'open-change-notice', {
    programme: apart.code,
    title: 'Another resistor',
    reason,
  })
  await apart.must('lead', 'propose-change', {
    programme: apart.code,
    notice: result.notice,
    change: {
      kind: 'value',
      parameter: 'parts-list',
      value: [{ references: 'R1', part, quantity: 1, soldered: 'machine' }],
      seen: 1,
    },
    reason,
  })
  const known = async () => (await judged(apart)).state.facts.records.parts.find(({ code }) => code === part)
  expect(before.state.facts.records.parts.some(({ code }) => code === part)).toBe(false)
  expect(await known()).toMatchObject({ revision: 1, approved: true })
  // What is only proposed is in no signature: the item stands as it stood.
  expect(itemStateFor((await judged(apart)).judgement, 'parts-list')?.digest).toBe(
    itemStateFor(before.judgement, 'parts-list')?.digest,
  )
  await revise(part, { ...PART_VALUES, leadMm: 0.9 }, 1)
  expect(await known()).toMatchObject({ revision: 2, approved: false })
})

describe('describing and revising', () => {
  test('a number stands for one part, whatever its capitals', async () => {
    const code = `p_${randomUUID().slice(0, 8)}`
    await first.must('design', 'describe-part', { code, values: PART_VALUES, reason })
    expect(
      await first.as('quality', 'describe-part', { code: code.toUpperCase(), values: PART_VALUES, reason }),
    ).toMatchObject({ ok: false, fields: { code: 'This number is taken.' } })
    // An underscore is itself and no wildcard.
    await first.must('design', 'describe-part', { code: code.replace('_', 'x'), values: PART_VALUES, reason })
  })
  test('values that contradict each other are refused at their boxes', async () => {
    expect(
      await first.as('design', 'describe-part', {
        code: randomUUID(),
        values: { ...PART_VALUES, coatingMostUm: 2, heatMaxS: undefined },
        reason,
      }),
    ).toMatchObject({
      ok: false,
      fields: { 'values.coatingMostUm': expect.any(String), 'values.heatMaxS': expect.any(String) },
    })
  })
  test('who revises an older revision is told of the newer', async () => {
    const part = await approvedPart()
    await revise(part, { ...PART_VALUES, leadMm: 0.5 }, 1)
    expect(
      await first.as('quality', 'revise-part', {
        part,
        values: { ...PART_VALUES, leadMm: 0.4 },
        seen: 1,
        reason,
      }),
    ).toMatchObject({ ok: false, fields: { seen: '2' } })
  })
  test('nobody approves a revision of their own, nor values that they did not see', async () => {
    const part = await approvedPart()
    await first.must('quality', 'revise-part', {
      part,
      values: { ...PART_VALUES, leadMm: 0.5 },
      seen: 1,
      reason,
    })
    const digest = partDigest(part, { ...PART_VALUES, leadMm: 0.5 })
    expect(await first.as('quality', 'approve-part', { part, digest })).toMatchObject({
      ok: false,
      message: expect.stringContaining('revision is your own'),
    })
    expect(
      await first.as('secondQuality', 'approve-part', { part, digest: partDigest(part, PART_VALUES) }),
    ).toMatchObject({ ok: false, message: expect.stringContaining('revised since') })
    await first.must('secondQuality', 'approve-part', { part, digest })
  })
})
