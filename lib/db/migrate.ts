import { createHash, randomUUID } from 'node:crypto'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Client } from 'pg'
import { withConnection } from '@/lib/db/connect'
import { checkServer } from '@/lib/db/server-check'
import { StartRefused } from '@/lib/settings/start-refused'

interface Migration {
  name: string
  sql: string
  /** SHA-256 of the file, in hexadecimal: as Prisma's own command line computes it. */
  checksum: string
}

interface AppliedMigration {
  migration_name: string
  checksum: string
  finished_at: Date | null
}

/** The number Prisma's command line locks on, so that it and this runner wait for each other. */
const MIGRATION_LOCK = 72_707_369

/** The table of Prisma's command line, column for column. */
const BOOKKEEPING = `CREATE TABLE IF NOT EXISTS "_prisma_migrations" (
  "id" VARCHAR(36) PRIMARY KEY NOT NULL,
  "checksum" VARCHAR(64) NOT NULL,
  "finished_at" TIMESTAMPTZ,
  "migration_name" VARCHAR(255) NOT NULL,
  "logs" TEXT,
  "rolled_back_at" TIMESTAMPTZ,
  "started_at" TIMESTAMPTZ NOT NULL DEFAULT now(),
  "applied_steps_count" INTEGER NOT NULL DEFAULT 0
)`

/**
 * Brings a database to the newest migration, each in a transaction of its own; several instances starting
 * at once wait for each other. Returns the names of those applied now.
 * Throws StartRefused when an applied migration has changed, is missing here, or was left half done.
 *
 * @param upTo no others than these, which must all be here as they were
 */
export async function migrate(
  url: string,
  folder: string,
  upTo?: readonly Pick<Migration, 'name' | 'checksum'>[],
): Promise<string[]> {
  const all = readMigrations(folder)
  for (const one of upTo ?? []) refuseOtherHistory(all, one)
  const migrations = upTo ? all.filter(({ name }) => upTo.some((one) => one.name === name)) : all
  return withConnection(url, async (client) => {
    await checkServer(client)
    await client.query('SELECT pg_advisory_lock($1)', [MIGRATION_LOCK])
    await client.query(BOOKKEEPING)
    const pending = pendingMigrations(migrations, await appliedMigrations(client))
    for (const migration of pending) await apply(client, migration)
    return pending.map(({ name }) => name)
  })
}

/** Their names, in order. */
export const migrationsIn = (folder: string): string[] => readMigrations(folder).map(({ name }) => name)

function readMigrations(folder: string): Migration[] {
  if (!existsSync(folder)) return []
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => readMigration(folder, entry.name))
    .sort((one, other) => (one.name < other.name ? -1 : 1))
}

function readMigration(folder: string, name: string): Migration {
  const path = join(folder, name, 'migration.sql')
  if (!existsSync(path)) throw new StartRefused(`The migration ${name} has no file ${path}. Restore it.`)
  const file = readFileSync(path)
  return { name, sql: file.toString('utf8'), checksum: createHash('sha256').update(file).digest('hex') }
}

async function appliedMigrations(client: Client): Promise<AppliedMigration[]> {
  const { rows } = await client.query<AppliedMigration>(
    `SELECT migration_name, checksum, finished_at FROM "_prisma_migrations" WHERE rolled_back_at IS NULL`,
  )
  return rows
}

/** Those not yet applied, in order; refuses a database whose history is not this folder's. */
function pendingMigrations(
  migrations: readonly Migration[],
  applied: readonly AppliedMigration[],
): Migration[] {
  for (const { migration_name: name, checksum, finished_at } of applied)
    refuseOtherHistory(migrations, { name, checksum, isFinished: finished_at !== null })
  const done = new Set(applied.map(({ migration_name }) => migration_name))
  return migrations.filter(({ name }) => !done.has(name))
}

/** Throws StartRefused where a migration that was applied is not among these, or not as it was. */
function refuseOtherHistory(
  migrations: readonly Migration[],
  { name, checksum, isFinished = true }: Pick<Migration, 'name' | 'checksum'> & { isFinished?: boolean },
): void {
  const here = migrations.find((migration) => migration.name === name)
  if (!here) {
    throw new StartRefused(
      `The database has a migration that this copy of Liquidus does not know: ${name}. ` +
        'A newer Liquidus has used it: start that one, or name another database.',
    )
  }
  if (!isFinished) {
    throw new StartRefused(
      `The migration ${name} was begun by another tool and not finished. ` +
        'Restore the database from a backup, or settle it with `npx prisma migrate resolve`.',
    )
  }
  if (here.checksum !== checksum) {
    throw new StartRefused(
      `The file of the migration ${name} has changed since it was applied. ` +
        'Restore the file as it was: what it did to the database cannot be done again.',
    )
  }
}

/** Sends the file as one text, so that function bodies pass, and records it in the same transaction. */
async function apply(client: Client, { name, sql, checksum }: Migration): Promise<void> {
  await client.query('BEGIN')
  try {
    const begun = await transactionId(client)
    await client.query(sql)
    if ((await transactionId(client)) !== begun) {
      throw new Error('it ends the transaction it runs in. Remove its BEGIN, COMMIT and ROLLBACK.')
    }
    await client.query(
      `INSERT INTO "_prisma_migrations" (id, checksum, migration_name, started_at, finished_at, applied_steps_count)
       VALUES ($1, $2, $3, now(), clock_timestamp(), 1)`,
      [randomUUID(), checksum, name],
    )
    await client.query('COMMIT')
  } catch (error) {
    await client.query('ROLLBACK')
    throw new Error(`The migration ${name} could not be applied: ${(error as Error).message}`, {
      cause: error,
    })
  }
}

async function transactionId(client: Client): Promise<string> {
  const { rows } = await client.query<{ id: string }>('SELECT pg_current_xact_id()::text AS id')
  return rows[0]?.id ?? ''
}
