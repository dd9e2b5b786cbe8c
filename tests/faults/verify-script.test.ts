import { afterAll, beforeAll, expect, test } from 'vitest'
import { openWorld, type World } from '@/tests/commands/world'
import { runScript } from '@/tests/faults/programs'
import { freshInstallation, type FreshInstallation } from '@/tests/setup/installation'

/* `npm run verify`, as whoever keeps the server runs it. */

let db: FreshInstallation
let world: World
beforeAll(async () => {
  db = await freshInstallation()
  world = await openWorld()
})
afterAll(async () => {
  await db.drop()
})

async function verify(codes: readonly string[], env: Record<string, string> = {}) {
  const program = runScript('scripts/verify.ts', codes, {
    DATABASE_URL: db.url,
    LIQUIDUS_DATA: db.folder,
    ...env,
  })
  return { code: await program.ended, printed: program.printed() }
}

test('a whole programme ends with 0, and says what was compared and the newest hash', async () => {
  const { code, printed } = await verify([world.code])
  const { headHash } = await db.client.trail.findFirstOrThrow({ where: { id: { not: 'installation' } } })
  expect(printed).toMatch(
    new RegExp(`^${world.code}: WHOLE \\(\\d+ entries, \\d+ rows, 0 files\\), newest hash ${headHash}$`, 'm'),
  )
  expect(code).toBe(0)
})

test('a broken one ends with 1 and says where', async () => {
  await db.client.programme.update({ where: { code: world.code }, data: { title: 'Another title' } })
  const { code, printed } = await verify([])
  expect(printed).toContain(`${world.code}: BROKEN`)
  expect(printed).toContain('title was recorded as “A board for tests” and is stored as “Another title”')
  expect(code).toBe(1)
})

test('what could not be checked ends with 2 and a sentence', async () => {
  expect(await verify(['NO-SUCH'])).toEqual({
    code: 2,
    printed: expect.stringContaining('Not checked: There is no programme NO-SUCH.'),
  })
  const away = new URL(db.url)
  away.port = '1'
  expect(await verify([], { DATABASE_URL: away.href })).toMatchObject({
    code: 2,
    printed: expect.stringContaining('does not answer'),
  })
  expect(await verify([], { DATABASE_URL: '' })).toMatchObject({
    code: 2,
    printed: expect.stringContaining(`There is no installation in ${db.folder}.`),
  })
})
