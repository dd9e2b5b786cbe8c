import type { Client } from 'pg'
import { StartRefused } from '@/lib/settings/start-refused'

const OLDEST_VERSION = 15

/** Refuses a server that is too old, or a database whose text is not UTF-8. */
export async function checkServer(client: Client): Promise<void> {
  const { rows } = await client.query<{ version: number; encoding: string }>(
    `SELECT current_setting('server_version_num')::int / 10000 AS version, current_setting('server_encoding') AS encoding`,
  )
  const [server] = rows
  if (!server) throw new Error('The database did not tell its version.')
  if (server.version < OLDEST_VERSION) {
    throw new StartRefused(
      `DATABASE_URL leads to PostgreSQL ${server.version}. Liquidus needs ${OLDEST_VERSION} or newer.`,
    )
  }
  if (server.encoding !== 'UTF8') {
    throw new StartRefused(
      `The database of DATABASE_URL keeps its text as ${server.encoding}. Create one with ENCODING 'UTF8' and name that.`,
    )
  }
}
