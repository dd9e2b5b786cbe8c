import { randomBytes } from 'node:crypto'
import { cpSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { inject } from 'vitest'
import { closeDatabase, database } from '@/lib/db/client'
import { withConnection } from '@/lib/db/connect'
import type { PrismaClient } from '@/lib/db/generated/client'
import { migrate } from '@/lib/db/migrate'
import { MIGRATIONS, refuseRemote, withDatabase } from '@/tests/setup/test-server'

export interface FreshDatabase {
  url: string
  client: PrismaClient
  /** Closes the client and removes the database. */
  drop(): Promise<void>
}

/**
 * A migrated database with no rows, for one test file. From here on this process's `database()` is
 * a client of it, so commands under test use it too. Call in `beforeAll`, and `drop` in `afterAll`.
 */
export const freshDatabase = (): Promise<FreshDatabase> => databaseFrom(inject('testDatabase').template)

/** A database without a table. */
export const emptyDatabase = (): Promise<FreshDatabase> => databaseFrom('template0')

/** The same as an earlier version left it, whose last migration is the one named. */
export async function databaseUpTo(lastMigration: string): Promise<FreshDatabase> {
  const made = await databaseFrom('template0')
  const folder = mkdtempSync(join(tmpdir(), 'liquidus-migrations-'))
  for (const name of readdirSync(MIGRATIONS))
    if (name <= lastMigration) cpSync(join(MIGRATIONS, name), join(folder, name), { recursive: true })
  await migrate(made.url, folder)
  rmSync(folder, { recursive: true })
  return made
}

async function databaseFrom(template: string): Promise<FreshDatabase> {
  const server = inject('testDatabase')
  refuseRemote(server.url)
  const name = `liquidus_test_${randomBytes(6).toString('hex')}`
  await withConnection(server.url, (client) =>
    client.query(`CREATE DATABASE ${name} ENCODING 'UTF8' TEMPLATE ${template}`),
  )
  const url = withDatabase(server.url, name)
  await closeDatabase()
  process.env.DATABASE_URL = url
  return {
    url,
    client: database(),
    async drop() {
      await closeDatabase()
      await withConnection(server.url, (client) =>
        client.query(`DROP DATABASE IF EXISTS ${name} WITH (FORCE)`),
      )
    },
  }
}
