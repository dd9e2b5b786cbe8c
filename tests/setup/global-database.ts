import { randomBytes } from 'node:crypto'
import type { TestProject } from 'vitest/node'
import { withConnection } from '@/lib/db/connect'
import { migrate } from '@/lib/db/migrate'
import { MIGRATIONS, startTestServer, withDatabase } from '@/tests/setup/test-server'

declare module 'vitest' {
  export interface ProvidedContext {
    /** The server for test databases, and the migrated database they are copies of. */
    testDatabase: { url: string; template: string }
  }
}

/** Once for a run: a server, and on it one migrated database to copy. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const server = await startTestServer()
  const template = `liquidus_template_${randomBytes(4).toString('hex')}`
  try {
    await withConnection(server.url, (client) =>
      client.query(`CREATE DATABASE ${template} ENCODING 'UTF8' TEMPLATE template0`),
    )
    await migrate(withDatabase(server.url, template), MIGRATIONS)
  } catch (error) {
    await server.stop()
    throw error
  }
  project.provide('testDatabase', { url: server.url, template })
  return async () => {
    await withConnection(server.url, (client) =>
      client.query(`DROP DATABASE IF EXISTS ${template} WITH (FORCE)`),
    )
    await server.stop()
  }
}
