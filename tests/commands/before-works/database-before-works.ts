import { readFileSync } from 'node:fs'
import { migrate } from '@/lib/db/migrate'
import { withConnection } from '@/lib/db/connect'
import { databaseUpTo, type FreshDatabase } from '@/tests/setup/database'
import { MIGRATIONS } from '@/tests/setup/test-server'

/** The last migration before logs, training and tokens were the works'. */
const LAST_MIGRATION = '20261129192230_board_confirmation'

interface Before {
  /** The programme with two logs, training, an answer to a signal and a token. */
  readonly code: string
  readonly tables: Readonly<Record<string, readonly object[]>>
  /** What each rule found of that programme (a) and of the other (b), judged by that version on 2026-12-01. */
  readonly verdicts: Readonly<Record<'a' | 'b', Readonly<Record<string, string>>>>
}

/** Two programmes as that version left them, each step taken through its own commands. */
export const BEFORE = JSON.parse(readFileSync(new URL('rows.json', import.meta.url), 'utf8')) as Before

/** Both of them log on a fluxer that they call alike; the other also on one of another line. */
export const OTHER = 'OLD-B'

/** The token that the first programme gave to a machine. */
export const TOKEN = 'an-earlier-token-that-a-programme-gave-0000'

/** That version's database, brought to today's tables. */
export async function databaseBeforeWorks(): Promise<FreshDatabase> {
  const db = await databaseUpTo(LAST_MIGRATION)
  await withConnection(db.url, async (client) => {
    for (const [table, rows] of Object.entries(BEFORE.tables))
      await client.query(
        `INSERT INTO "${table}" SELECT * FROM json_populate_recordset(NULL::"${table}", $1::json)`,
        [JSON.stringify(rows)],
      )
  })
  await migrate(db.url, MIGRATIONS)
  return db
}
