import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { withConnection } from '@/lib/db/connect'
import { startEmbeddedServer } from '@/lib/db/embedded-server'
import { attachFile } from '@/tests/commands/every-command-once'
import { openWorld, type World } from '@/tests/commands/world'
import { runScript } from '@/tests/faults/programs'
import { freshInstallation, type FreshInstallation } from '@/tests/setup/installation'

/* The README's two commands, as whoever keeps the server types them: from a database that is named into a private one. */

const README = readFileSync('README.md', 'utf8')
const COMMANDS = [...README.matchAll(/^ {4}npm run (backup|restore) -- (\S+)$/gm)].map(
  ([, script, file]) => [script!, file!] as const,
)

let from: FreshInstallation
let world: World
let above: string
beforeAll(async () => {
  from = await freshInstallation()
  world = await openWorld()
  await attachFile(world, 'A certificate of this test.')
  above = mkdtempSync(join(tmpdir(), 'liquidus-readme-'))
})
afterAll(async () => {
  await from.drop()
  rmSync(above, { recursive: true, force: true })
})

async function run(script: string, file: string, env: Record<string, string>) {
  const program = runScript(`scripts/${script}.ts`, file ? [join(above, file)] : [], env)
  return { code: await program.ended, printed: program.printed() }
}

test('what is backed up is restored and verified', async () => {
  expect(COMMANDS.map(([script]) => script)).toEqual(['backup', 'restore'])
  const [[, written], [, read]] = COMMANDS as [(typeof COMMANDS)[number], (typeof COMMANDS)[number]]
  expect(await run('backup', written, { DATABASE_URL: from.url, LIQUIDUS_DATA: from.folder })).toEqual({
    code: 0,
    printed: expect.stringMatching(/liquidus-backup\.tar\.gz: \d+ rows and 1 files\./),
  })

  const place = { DATABASE_URL: '', LIQUIDUS_DATA: join(above, 'new') }
  const restored = await run('restore', read, place)
  expect(restored.printed).toMatch(
    new RegExp(`^${world.code}: WHOLE \\(\\d+ entries, \\d+ rows, 1 files\\)`, 'm'),
  )
  // As it stood: the people of this test were put into the database beside the door, which verification tells.
  const verified = await run('verify', '', { DATABASE_URL: from.url, LIQUIDUS_DATA: from.folder })
  expect(restored.printed).toContain(verified.printed)
  expect(restored.code).toBe(verified.code)
  const server = await startEmbeddedServer(place.LIQUIDUS_DATA)
  try {
    const { rows } = await withConnection(server.url, (client) =>
      client.query<{ code: string }>('SELECT "code" FROM "Programme"'),
    )
    expect(rows).toEqual([{ code: world.code }])
  } finally {
    await server.stop()
  }

  expect(await run('restore', read, place)).toEqual({
    code: 2,
    printed: expect.stringContaining('Nothing was restored: There is an installation in'),
  })
  expect(await run('restore', read, { DATABASE_URL: from.url, LIQUIDUS_DATA: join(above, 'other') })).toEqual(
    {
      code: 2,
      printed: expect.stringContaining('Nothing was restored: The database is not empty.'),
    },
  )
})

test('without a file it says what to name', async () => {
  const env = { DATABASE_URL: from.url, LIQUIDUS_DATA: from.folder }
  expect(await run('backup', '', env)).toMatchObject({
    code: 2,
    printed: expect.stringContaining('Name the file to be made.'),
  })
})
