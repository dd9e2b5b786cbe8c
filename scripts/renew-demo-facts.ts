import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { closeDatabase, database } from '@/lib/db/client'
import { migrate } from '@/lib/db/migrate'
import { loadState } from '@/lib/programme/load-state'
import { startEmbeddedServer } from '@/lib/db/embedded-server'
import { say } from '@/scripts/progress'
import { PROJECT_ROOT } from '@/scripts/project-root'
import { loadDemo } from '@/scripts/sign-ins'
import type { ProgrammeState } from '@/shared/gate/programme-state'

/**
 * Development tool: loads the demo into a database that is thrown away and writes the facts of its
 * programmes to tests/rules/demo/facts/, for the tests that judge the demo without a database.
 *
 *   npm run renew-demo-facts
 *
 * Needed only when the demo's own story changes. Ids and hashes differ from one loading to the next and
 * are replaced by counted ones, so that a renewal shows only what changed.
 */
const FOLDER = join(PROJECT_ROOT, 'tests', 'rules', 'demo', 'facts')
/** The day on which the demo is judged in those tests: the day after its last entry. */
const TODAY = '2027-01-01'

async function renew(): Promise<void> {
  const data = mkdtempSync(join(tmpdir(), 'liquidus-demo-'))
  const server = await startEmbeddedServer(data, { durable: false })
  try {
    process.env.DATABASE_URL = server.url
    process.env.LIQUIDUS_DATA = data
    await migrate(server.url, join(PROJECT_ROOT, 'prisma', 'migrations'))
    await loadDemo()
    const programmes = await database().programme.findMany({ orderBy: { code: 'asc' } })
    for (const { id, code } of programmes) {
      const rows = await database().planItem.findMany({
        where: { programmeId: id },
        orderBy: { position: 'asc' },
        select: { key: true, stage: true, position: true, added: true, setAside: true, lesson: true },
      })
      const text = textOf(await loadState(database(), id, TODAY), rows)
      writeFileSync(join(FOLDER, `${code.toLowerCase()}.json`), text)
      say(`${code}: ${text.length} characters`)
    }
  } finally {
    await closeDatabase()
    await server.stop()
    rmSync(data, { recursive: true, force: true })
  }
}

/** The state as JSON: maps as lists of pairs, items as the rows of the plan they are made from. */
function textOf(state: ProgrammeState, plan: readonly object[]): string {
  const plain = JSON.stringify({ ...state, items: plan }, (_, value: unknown) =>
    value instanceof Map ? { pairs: [...value] } : value,
  )
  return `${withCountedIds(plain)}\n`
}

const ID = /[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}/g

function withCountedIds(text: string): string {
  const counted = new Map<string, string>()
  return text
    .replace(ID, (id) => {
      const known = counted.get(id) ?? `00000000-0000-7000-8000-${String(counted.size + 1).padStart(12, '0')}`
      counted.set(id, known)
      return known
    })
    .replace(/"(merkleRoot|headHash)":"[0-9a-f]{64}"/g, (_, name: string) => `"${name}":"${'0'.repeat(64)}"`)
}

await renew()
