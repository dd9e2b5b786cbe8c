import { createReadStream } from 'node:fs'
import { readdir, rm } from 'node:fs/promises'
import { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import { createGunzip } from 'node:zlib'
import type { Client } from 'pg'
import { from as copyFrom } from 'pg-copy-streams'
import { extract } from 'tar-stream'
import {
  BEGIN,
  beginSchema,
  END,
  endSchema,
  EVIDENCE,
  TABLES,
  type Begin,
  type End,
} from '@/lib/backup/archive-parts'
import { copied, quoted } from '@/lib/backup/tables-in-order'
import { withConnection } from '@/lib/db/connect'
import { migrate, migrationsIn } from '@/lib/db/migrate'
import { putBack } from '@/lib/evidence/put-back'
import { openEvidenceStore } from '@/lib/evidence/store'
import { StartRefused } from '@/lib/settings/start-refused'

interface EmptyPlace {
  /** An empty database. */
  readonly url: string
  /** A folder that is empty or not there. */
  readonly evidence: string
  readonly migrations: string
}

/** What was put in. */
interface Restored extends End {
  /** Whether the next start has nothing to bring up to date. */
  readonly isOfThisVersion: boolean
}

/**
 * Puts an archive into an empty place: the tables in one transaction, the files each under the hash that its bytes give.
 * Everything that the archive says it holds must come, or nothing stays. Later migrations are the next start's.
 */
export async function restoreBackup(path: string, place: EmptyPlace): Promise<Restored> {
  await refuseFullPlace(place)
  await openEvidenceStore(place.evidence)
  try {
    return await withConnection(place.url, (client) => putIn(path, client, place))
  } catch (error) {
    await rm(place.evidence, { recursive: true, force: true })
    throw error instanceof StartRefused ? error : new StartRefused(notRestored(path, error as Error))
  }
}

const notRestored = (path: string, { message }: Error): string =>
  `${path} could not be restored: ${message.replace(/\.?$/, '.')} Nothing of it was kept.`

async function putIn(path: string, client: Client, place: EmptyPlace): Promise<Restored> {
  const came = { rows: {} as Record<string, number>, files: 0 }
  let begin: Begin | undefined
  let end: End | undefined
  const archive = extract()
  const reading = pipeline(createReadStream(path), createGunzip(), archive)
  reading.catch(() => undefined)
  try {
    for await (const part of archive) {
      const { name } = part.header
      const entry = Readable.from(part as AsyncIterable<Uint8Array>)
      if (name === BEGIN) {
        begin = beginSchema.parse(await jsonOf(entry))
        await prepare(client, begin, place)
      } else if (name.startsWith(TABLES))
        came.rows[name.slice(TABLES.length)] = await putTable(client, begin, name.slice(TABLES.length), entry)
      else if (name.startsWith(EVIDENCE)) {
        await putBack(place.evidence, name.slice(EVIDENCE.length), entry)
        came.files += 1
      } else if (name === END) end = endSchema.parse(await jsonOf(entry))
      else throw new Error(`it holds ${name}, which is no part of a backup`)
    }
    await reading
    if (!end) throw new Error('it breaks off before its end')
    await compare(client, came, end)
    await client.query('COMMIT')
    return { ...end, isOfThisVersion: begin?.migrations.length === migrationsIn(place.migrations).length }
  } catch (error) {
    await client.query('ROLLBACK')
    await emptyAgain(client)
    throw error
  }
}

/** The tables as the archive's version had them, without the rows that a new installation begins with. */
async function prepare(client: Client, { migrations, tables }: Begin, place: EmptyPlace): Promise<void> {
  await migrate(place.url, place.migrations, migrations)
  await client.query('BEGIN')
  for (const { name } of tables.toReversed()) await client.query(`DELETE FROM ${quoted(name)}`)
}

async function putTable(
  client: Client,
  begin: Begin | undefined,
  name: string,
  entry: Readable,
): Promise<number> {
  const table = begin?.tables.find((one) => one.name === name)
  if (!table) throw new Error(`it does not say what ${name} holds`)
  const copying = client.query(copyFrom(`COPY ${copied(table)} FROM STDIN`))
  await pipeline(entry, copying)
  return copying.rowCount
}

async function jsonOf(entry: Readable): Promise<unknown> {
  const chunks: Uint8Array[] = []
  for await (const chunk of entry as AsyncIterable<Uint8Array>) chunks.push(chunk)
  return JSON.parse(Buffer.concat(chunks).toString('utf8'))
}

async function compare(
  client: Client,
  came: { rows: Readonly<Record<string, number>>; files: number },
  end: End,
): Promise<void> {
  for (const [table, rows] of Object.entries(end.rows))
    if (came.rows[table] !== rows)
      throw new Error(`of ${table} it says ${rows} rows and has ${came.rows[table] ?? 0}`)
  if (came.files !== end.files) throw new Error(`it says ${end.files} files and has ${came.files}`)
  const { rows } = await client.query<{ id: string; headHash: string }>(
    'SELECT "id", "headHash" FROM "Trail"',
  )
  const heads = Object.fromEntries(rows.map(({ id, headHash }) => [id, headHash]))
  const other = Object.keys({ ...heads, ...end.heads }).find((id) => heads[id] !== end.heads[id])
  if (other !== undefined) throw new Error(`the trail ${other} ends in another hash than it says`)
}

/** Takes away what the migrations made, and nothing that an extension did. */
async function emptyAgain(client: Client): Promise<void> {
  const { rows } = await client.query<{ drop: string }>(
    `SELECT 'DROP TABLE ' || c.oid::regclass || ' CASCADE' AS "drop" FROM pg_class c
     WHERE c.relnamespace = 'public'::regnamespace AND c.relkind = 'r'
       AND NOT EXISTS (SELECT FROM pg_depend d WHERE d.objid = c.oid AND d.deptype = 'e')
     UNION ALL
     SELECT 'DROP FUNCTION ' || p.oid::regprocedure || ' CASCADE' FROM pg_proc p
     WHERE p.pronamespace = 'public'::regnamespace
       AND NOT EXISTS (SELECT FROM pg_depend d WHERE d.objid = p.oid AND d.deptype = 'e')`,
  )
  for (const { drop } of rows) await client.query(drop)
}

/** What is there stays: a backup is put beside nothing. */
async function refuseFullPlace({ url, evidence }: EmptyPlace): Promise<void> {
  const files = await readdir(evidence).catch(() => [])
  if (files.length > 0) throw new StartRefused(`${evidence} is not empty. Restore into a new data folder.`)
  const tables = await withConnection(url, (client) =>
    client.query<{ count: number }>(
      `SELECT count(*)::int AS "count" FROM pg_class
       WHERE relnamespace = 'public'::regnamespace AND relkind = 'r'`,
    ),
  )
  if (tables.rows[0]!.count > 0)
    throw new StartRefused('The database is not empty. Restore into a new, empty one.')
}
