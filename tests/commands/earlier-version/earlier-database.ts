import { readFileSync } from 'node:fs'
import { migrate } from '@/lib/db/migrate'
import { withConnection } from '@/lib/db/connect'
import { databaseUpTo, type FreshDatabase } from '@/tests/setup/database'
import { MIGRATIONS } from '@/tests/setup/test-server'

/** The last migration of version 0.1 before layers, lessons and findings were stored as data. */
const LAST_MIGRATION = '20261125205339_retire_lessons'

/** The programme in it: every step was taken through that version's own commands. */
export const PROGRAMME = 'OLD-1'

/** A database as that version left it, brought to today's tables. */
export async function earlierDatabase(): Promise<FreshDatabase> {
  const db = await databaseUpTo(LAST_MIGRATION)
  const tables = JSON.parse(readFileSync(new URL('rows.json', import.meta.url), 'utf8')) as Tables
  await withConnection(db.url, async (client) => {
    for (const [table, rows] of Object.entries(tables))
      await client.query(
        `INSERT INTO "${table}" SELECT * FROM jsonb_populate_recordset(NULL::"${table}", $1::jsonb)`,
        [JSON.stringify(rows)],
      )
  })
  await migrate(db.url, MIGRATIONS)
  return db
}

/** Rows by table, each table after those that it points to. */
type Tables = Readonly<Record<string, readonly object[]>>
