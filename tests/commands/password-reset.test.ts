import { afterAll, beforeAll, expect, test } from 'vitest'
import { readResets, resetBefore } from '@/lib/auth/password-reset'
import { database } from '@/lib/db/client'
import { quickHash } from '@/tests/commands/quick-hash'
import { itemDigest, openWorld, PASSWORD, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

let db: FreshDatabase
let world: World
let passwordHash: string
beforeAll(async () => {
  db = await freshDatabase()
  world = await openWorld()
  passwordHash = quickHash(PASSWORD)
})
afterAll(() => db.drop())

const ITEM = 'programme-frame'

/** Signs, which is a signature whoever gives it, and answers what the trail says of it. */
async function sign(who: 'design' | 'secondDesign') {
  const outcome = await world.must(who, 'approve-item', {
    programme: world.code,
    item: ITEM,
    department: 'design',
    digest: await itemDigest(world.code, ITEM),
    comment: '',
  })
  const entry = await database().trailEntry.findFirstOrThrow({ where: { hash: outcome.hash } })
  return JSON.parse(entry.payload) as Record<string, unknown>
}

/** Makes the approval lapse, so that another can be given. */
let years = 20
const change = () =>
  world.must('lead', 'revise-parameter', {
    programme: world.code,
    parameter: 'service-years',
    value: years,
    seen: years++ - 19,
    reason: 'Test',
  })

test('a reset stands beside every later signature of that person, and of nobody else, with what came after it', async () => {
  const { person, must } = world
  expect(await sign('design')).not.toHaveProperty('passwordReset')
  await must('administrator', 'reset-password', { personId: person.design, passwordHash })
  await change()
  const reset = { byId: person.administrator, byName: 'Test administrator', at: expect.any(String) }
  expect(await sign('design')).toMatchObject({ passwordReset: { ...reset, changedAt: null } })
  await must('design', 'change-own-password', { passwordHash })
  await change()
  // Whoever had the password of the reset could choose the next one: it does not make the reset undone.
  expect(await sign('design')).toMatchObject({ passwordReset: { ...reset, changedAt: expect.any(String) } })
  await change()
  expect(await sign('secondDesign')).not.toHaveProperty('passwordReset')
})

test('what stands on a stamp is the newest reset before it', async () => {
  const resets = await readResets(database())
  const [only] = resets
  expect(resets).toHaveLength(1)
  const before = new Date(new Date(only?.at ?? '').getTime() - 1)
  expect(resetBefore(resets, world.person.design, before)).toBeUndefined()
  expect(resetBefore(resets, world.person.design, new Date())).toBe(only)
  expect(resetBefore(resets, world.person.secondDesign, new Date())).toBeUndefined()
})
