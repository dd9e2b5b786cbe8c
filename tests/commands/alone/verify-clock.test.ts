import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { perform } from '@/lib/commands/perform'
import { verdictOnStored } from '@/lib/trail/verify-stored'
import { VALID_INPUT } from '@/tests/commands/valid-inputs'
import { openWorld, PASSWORD, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

let db: FreshDatabase
let world: World
beforeAll(async () => {
  db = await freshDatabase()
  world = await openWorld()
})
afterAll(() => db.drop())

test('a clock that is set back is told, and breaks nothing', async () => {
  const { id } = await db.client.programme.findUniqueOrThrow({ where: { code: world.code } })
  const before = (
    await db.client.trailEntry.findMany({ where: { trailId: id }, orderBy: { seq: 'asc' } })
  ).at(-1)
  const at = new Date(Date.parse(before?.at ?? '') - 60_000)
  const outcome = await perform(
    world.person.quality,
    'add-record',
    await VALID_INPUT['add-record'](world, 'quality'),
    { key: randomUUID(), proof: { password: PASSWORD }, at },
  )
  expect(outcome).toMatchObject({ ok: true })
  const { intact, chain } = await verdictOnStored(id)
  expect(intact).toBe(true)
  expect(chain.clockSteps).toEqual([
    { seq: (before?.seq ?? 0) + 1, at: at.toISOString(), before: before?.at },
  ])
})
