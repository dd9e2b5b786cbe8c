import { afterAll, beforeAll, expect, test } from 'vitest'
import { database } from '@/lib/db/client'
import { entriesHolding, readOrigins } from '@/lib/queries/origins'
import { openWorld, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'
import { recordedIn } from '@/shared/why/step'
import { valueOrigin } from '@/shared/why/value-origin'
import { judgedNow } from '@/tests/commands/way-through'

let db: FreshDatabase
let world: World
beforeAll(async () => {
  db = await freshDatabase()
  world = await openWorld()
})
afterAll(() => db.drop())

test('a value leads to its entries in the trail, through the notice that brought it', async () => {
  const programme = world.code
  const { seq } = await world.must('lead', 'revise-parameter', {
    programme,
    parameter: 'service-years',
    value: 12,
    seen: 1,
    reason: 'Asked for.',
  })
  const { state } = await judgedNow(world)
  const origins = await readOrigins(state.programme.id, {
    parameters: ['service-years'],
    limits: [],
    rows: [],
  })
  const step = valueOrigin('service-years', state, origins)
  expect(step.lines).toEqual(['Revision 2: 10 years → 12 years'])
  const entries = await entriesHolding(state.programme.id, recordedIn([step]))
  expect([...entries.values()]).toEqual([[1], [seq]])
  const entry = await database().trailEntry.findFirstOrThrow({ where: { trailId: state.programme.id, seq } })
  expect(entry.command).toBe('revise-parameter')
})
