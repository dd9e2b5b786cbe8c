/*
 * How long the home of the works takes over 12 lines, 40 programmes and 500,000 readings, against the emptiest page
 * that the same server renders.
 * Run: npx tsx tests/bench/works-home.bench.ts
 */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { hashPassword } from '@/lib/auth/password'
import { closeDatabase } from '@/lib/db/client'
import { startEmbeddedServer } from '@/lib/db/embedded-server'
import { migrate } from '@/lib/db/migrate'
import { addPerson, fillWorks } from '@/tests/bench/full-works'
import { timesEmptyPage } from '@/tests/bench/page-times'
import { withAppOn } from '@/tests/bench/running-app'
import { signedInAt } from '@/tests/faults/plain-browser'

const MAX_RATIO = 3
const PERSON = { email: 'bench@test.invalid', password: 'measured and weighed' }

async function fill(dataFolder: string): Promise<void> {
  const server = await startEmbeddedServer(dataFolder)
  try {
    process.env.DATABASE_URL = server.url
    await migrate(server.url, 'prisma/migrations')
    await addPerson(PERSON.email, await hashPassword(PERSON.password))
    await fillWorks()
  } finally {
    await closeDatabase()
    await server.stop()
  }
}

const dataFolder = mkdtempSync(join(tmpdir(), 'liquidus-bench-'))
try {
  await fill(dataFolder)
  await withAppOn(dataFolder, 'off', async (base) => {
    const cookie = await signedInAt(base, PERSON)
    const cold = performance.now()
    await (await fetch(`${base}/works`, { headers: { cookie } })).text()
    console.log(`the first answer, nothing judged yet: ${(performance.now() - cold).toFixed(0)} ms`)
    const ratio = await timesEmptyPage({ base, cookie, path: '/works', name: 'works’ home', text: 'L11' })
    console.log(
      `at p95 the works’ home takes ${ratio.toFixed(2)} times the empty page (wanted: ${MAX_RATIO} or less)`,
    )
    if (!(ratio <= MAX_RATIO)) process.exitCode = 1
  })
} finally {
  rmSync(dataFolder, { recursive: true, force: true })
}
