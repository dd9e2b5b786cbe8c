import { randomBytes } from 'node:crypto'
import { inject } from 'vitest'
import { closeDatabase, database } from '@/lib/db/client'
import { withConnection } from '@/lib/db/connect'
import type { PrismaClient } from '@/lib/db/generated/client'
import { refuseRemote, withDatabase } from '@/tests/setup/test-server'

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
export async function freshDatabase(): Promise<FreshDatabase> {
  const server = inject('testDatabase')
  refuseRemote(server.url)
  const name = `liquidus_test_${randomBytes(6).toString('hex')}`
  await withConnection(server.url, (client) =>
    client.query(`CREATE DATABASE ${name} TEMPLATE ${server.template}`),
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
