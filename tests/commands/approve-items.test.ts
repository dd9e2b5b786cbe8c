import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import type { InputOf } from '@/lib/commands/all-commands'
import { perform } from '@/lib/commands/perform'
import { database } from '@/lib/db/client'
import { verdictOnStored } from '@/lib/trail/verify-stored'
import { entryTold } from '@/shared/commands/entry-told'
import { itemDigest, openWorld, PASSWORD, trailLength, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

let db: FreshDatabase
let world: World
let items: string[]
beforeAll(async () => {
  db = await freshDatabase()
})
afterAll(() => db.drop())

/** A programme with three items of its own, which nothing but signatures keeps from being approved. */
beforeEach(async () => {
  world = await openWorld()
  items = []
  for (const title of ['First', 'Second', 'Third']) {
    const item: InputOf<'add-item'>['item'] = {
      stage: 'specification',
      title,
      asks: 'Is it so?',
      owner: 'quality',
      approvers: ['design', 'quality'],
      evidence: '',
    }
    items.push((await world.must('lead', 'add-item', { programme: world.code, item })).result.item)
  }
})

const listed = async (...keys: readonly string[]): Promise<InputOf<'approve-items'>> => ({
  programme: world.code,
  department: 'quality',
  seen: await trailLength(world.code),
  items: await Promise.all(keys.map(async (item) => ({ item, digest: await itemDigest(world.code, item) }))),
  comment: 'Read at my desk.',
})
const approvals = () => database().approval.findMany({ where: { programme: { code: world.code } } })
const entries = async (after: number) =>
  database().trailEntry.findMany({
    where: { trailId: (await programme()).id, seq: { gt: after } },
    orderBy: { seq: 'asc' },
  })
const programme = () => database().programme.findUniqueOrThrow({ where: { code: world.code } })

describe('a list signed once', () => {
  test('has a row and an entry for each item with its own digest, and one for the list', async () => {
    const before = await trailLength(world.code)
    const input = await listed(...items)
    await world.must('quality', 'approve-items', input)
    expect((await approvals()).map(({ itemKey, digest }) => ({ item: itemKey, digest }))).toEqual(
      expect.arrayContaining(input.items.map(({ item, digest }) => ({ item, digest }))),
    )
    const written = await entries(before)
    expect(written.map(({ command }) => command)).toEqual([
      'approve-item',
      'approve-item',
      'approve-item',
      'approve-items',
    ])
    expect(entryTold(written[0]!)).toMatchObject({
      subject: 'First',
      what: 'for Quality, with one signature over 3 items',
      words: 'Read at my desk.',
    })
    expect(entryTold(written[3]!)).toMatchObject({ subject: '3 items for Quality' })
  })
  test('is verified with all that its entries say was stored', async () => {
    await world.must('quality', 'approve-items', await listed(...items))
    const { id } = await programme()
    expect((await verdictOnStored(id, new Map())).stored?.breaks).toEqual([])
  })
  test('sent twice is signed once, and answers the same', async () => {
    const input = await listed(...items)
    const circumstances = { key: randomUUID(), proof: { password: PASSWORD } }
    const first = await perform(world.person.quality, 'approve-items', input, circumstances)
    const again = await perform(world.person.quality, 'approve-items', input, circumstances)
    expect(again).toEqual(first)
    expect(await approvals()).toHaveLength(3)
  })
  test('with a wrong password is not signed', async () => {
    const outcome = await perform(world.person.quality, 'approve-items', await listed(...items), {
      key: randomUUID(),
      proof: { password: 'wrong' },
    })
    expect(outcome.ok).toBe(false)
    expect(await approvals()).toHaveLength(0)
  })
})

describe('nothing is signed', () => {
  test('when one item changed since it was shown; it says which, and through what', async () => {
    const input = await listed(...items)
    await world.must('design', 'attach-evidence', {
      programme: world.code,
      item: items[1]!,
      kind: 'drawing',
      note: '',
      what: { url: 'https://example.invalid/drawing' },
    })
    const outcome = await world.as('quality', 'approve-items', input)
    expect(outcome).toMatchObject({ ok: false, message: expect.stringContaining('1 of the 3') })
    const { fields } = outcome as { fields: Record<string, string> }
    expect(Object.keys(fields)).toEqual([`items.${items[1]}`])
    expect(fields[`items.${items[1]}`]).toMatch(
      /Changed since you opened the list\. Attached evidence.*\(Test design\)/,
    )
    expect(await approvals()).toHaveLength(0)
  })
  test('when one of them was approved already, or by the same person for another department', async () => {
    await world.must('lead', 'invite-member', {
      programme: world.code,
      email: `quality-${world.code}@test.invalid`.toLowerCase(),
      department: 'design',
    })
    await world.must('quality', 'approve-items', { ...(await listed(items[0]!)), department: 'design' })
    await world.must('secondQuality', 'approve-items', await listed(items[1]!))
    const outcome = await world.as('quality', 'approve-items', await listed(...items))
    expect(outcome).toMatchObject({
      ok: false,
      fields: {
        [`items.${items[0]}`]: expect.stringContaining(
          'A second department’s approval comes from somebody else',
        ),
        [`items.${items[1]}`]: expect.stringContaining('has already approved'),
      },
    })
    expect(await approvals()).toHaveLength(2)
  })
  test('when it is empty, or names an item twice', async () => {
    const input = await listed(items[0]!, items[0]!)
    expect(await world.as('quality', 'approve-items', input)).toMatchObject({ ok: false })
    expect(await world.as('quality', 'approve-items', { ...input, items: [] })).toMatchObject({
      ok: false,
      message: 'Tick the items that you have read.',
    })
  })
})

describe('an approval that a change leaves as it was in substance', () => {
  const ITEM = 'interconnection'
  const specify = async (
    who: 'design' | 'production',
    parameter: string,
    value: string | number | boolean,
  ) => {
    const seen = await database().revision.count({ where: { parameter, programme: { code: world.code } } })
    await world.must(who, 'revise-parameter', {
      programme: world.code,
      parameter,
      value,
      seen,
      reason: 'R',
    })
  }
  beforeEach(async () => {
    await specify('design', 'interconnection', 'edge')
    await specify('design', 'contact-gold', 2)
    await specify('design', 'contact-nickel', 6)
    await specify('production', 'contacts-covered', true)
    await world.must('quality', 'approve-items', await listed(ITEM))
  })
  const confirming = async (): Promise<InputOf<'approve-items'>> => {
    const input = await listed(ITEM)
    return { ...input, items: input.items.map((entry) => ({ ...entry, confirms: true })) }
  }

  test('is confirmed by who gave it, which stands in its entry', async () => {
    await specify('design', 'contact-gold', 3)
    const before = await trailLength(world.code)
    await world.must('quality', 'approve-items', await confirming())
    const [first, second] = await database().approval.findMany({
      where: { programme: { code: world.code } },
      orderBy: { id: 'asc' },
    })
    expect(second).toMatchObject({ confirms: first?.id, found: first?.found })
    expect(entryTold((await entries(before))[0]!)?.what).toContain('confirmed after a change')
  })
  test('is not confirmed by another of the department, who approves it again', async () => {
    await specify('design', 'contact-gold', 3)
    expect(await world.as('secondQuality', 'approve-items', await confirming())).toMatchObject({
      ok: false,
      fields: { [`items.${ITEM}`]: expect.stringContaining('Only who gave an approval') },
    })
    await world.must('secondQuality', 'approve-items', await listed(ITEM))
  })
  test('is not confirmed with less margin, nor bit by bit below what was approved', async () => {
    await specify('design', 'contact-gold', 1.9)
    expect(await world.as('quality', 'approve-items', await confirming())).toMatchObject({
      ok: false,
      fields: { [`items.${ITEM}`]: expect.stringMatching(/approved again.*less margin/) },
    })
    await world.must('quality', 'approve-items', await listed(ITEM))
  })
})
