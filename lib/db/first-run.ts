import type { Client } from 'pg'
import { withConnection } from '@/lib/db/connect'
import { migrate } from '@/lib/db/migrate'

/** What the database holds of the demo after a start: it was loaded now or before, or it is not there. */
export type DemoState = 'loaded now' | 'loaded before' | 'absent'

const FIRST_RUN_LOCK = 72_707_370

/**
 * Brings a database to the newest migration and, where wanted and where it is empty, loads the demo.
 * Several instances starting at once wait for each other. A demo whose loading was broken off is taken
 * out whole and loaded again: no start has gone beyond that point, so nobody has worked in it.
 */
export async function prepareTables(
  url: string,
  migrations: string,
  demo: { wanted: boolean; load: () => Promise<void> },
): Promise<DemoState> {
  return withConnection(url, async (client) => {
    await client.query('SELECT pg_advisory_lock($1)', [FIRST_RUN_LOCK])
    const progress = await demoProgress(client)
    if (progress === 'begun') {
      await client.query(
        'DROP SCHEMA public CASCADE; CREATE SCHEMA public; DROP SCHEMA liquidus_setup CASCADE',
      )
    }
    await migrate(url, migrations)
    if (progress === 'finished') return 'loaded before'
    if (!demo.wanted || (await hasPeople(client))) return 'absent'
    await client.query(
      `CREATE SCHEMA IF NOT EXISTS liquidus_setup;
       CREATE TABLE IF NOT EXISTS liquidus_setup.demo (begun_at timestamptz NOT NULL, finished_at timestamptz);
       DELETE FROM liquidus_setup.demo;
       INSERT INTO liquidus_setup.demo (begun_at) VALUES (now())`,
    )
    await demo.load()
    await client.query('UPDATE liquidus_setup.demo SET finished_at = now()')
    return 'loaded now'
  })
}

/** Kept beside the app's tables, not among them: it says how far they can be relied on. */
async function demoProgress(client: Client): Promise<'not begun' | 'begun' | 'finished'> {
  const table = await client.query<{ exists: boolean }>(
    `SELECT to_regclass('liquidus_setup.demo') IS NOT NULL AS exists`,
  )
  if (!table.rows[0]?.exists) return 'not begun'
  const { rows } = await client.query<{ finished: boolean }>(
    'SELECT finished_at IS NOT NULL AS finished FROM liquidus_setup.demo',
  )
  if (!rows[0]) return 'not begun'
  return rows[0].finished ? 'finished' : 'begun'
}

async function hasPeople(client: Client): Promise<boolean> {
  const { rows } = await client.query<{ people: boolean }>('SELECT EXISTS (SELECT FROM "Person") AS people')
  return rows[0]?.people ?? false
}
