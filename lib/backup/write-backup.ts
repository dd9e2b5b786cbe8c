import { createReadStream, createWriteStream } from 'node:fs'
import { mkdtemp, open, rm, stat } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pipeline } from 'node:stream/promises'
import { createGzip } from 'node:zlib'
import type { Client } from 'pg'
import { to as copyTo } from 'pg-copy-streams'
import { pack, type Pack } from 'tar-stream'
import { BEGIN, END, EVIDENCE, FORMAT, TABLES, type Begin, type End } from '@/lib/backup/archive-parts'
import { copied, tablesInOrder } from '@/lib/backup/tables-in-order'
import { withConnection } from '@/lib/db/connect'
import { renameDurably } from '@/lib/evidence/durable-rename'
import { contentPath } from '@/lib/evidence/evidence-paths'
import { storedHashes } from '@/lib/evidence/stored-hashes'
import { StartRefused } from '@/lib/settings/start-refused'

interface Installation {
  readonly url: string
  /** Its folder of evidence. */
  readonly evidence: string
}

/**
 * Writes an installation into one new file, while it runs: all tables as they were at one moment, then every file, of
 * which the rows name none that is not there, since a file is stored before it is recorded. Refuses to write over a file.
 */
export async function writeBackup({ url, evidence }: Installation, path: string): Promise<End> {
  if (await exists(path)) throw new StartRefused(`There is a file ${path} already. Name another.`)
  const unfinished = `${path}.unfinished`
  try {
    const end = await withConnection(url, async (client) => {
      await client.query('BEGIN TRANSACTION ISOLATION LEVEL REPEATABLE READ, READ ONLY')
      const tar = pack()
      // It holds the hashes of passwords and all that people wrote: nobody else reads it.
      const written = pipeline(tar, createGzip(), createWriteStream(unfinished, { flags: 'wx', mode: 0o600 }))
      const [told] = await Promise.all([fill(tar, client, evidence), written])
      return told
    })
    await syncFile(unfinished)
    await renameDurably(unfinished, path)
    return end
  } catch (error) {
    await rm(unfinished, { force: true })
    const { code } = error as NodeJS.ErrnoException
    if (code === 'ENOSPC') throw new StartRefused(`The disk is full. Nothing was kept of ${path}.`)
    if (code === 'ENOENT' || code === 'EACCES')
      throw new StartRefused(`${path} cannot be written: ${(error as Error).message}.`)
    throw error
  }
}

async function fill(tar: Pack, client: Client, evidence: string): Promise<End> {
  const passing = await mkdtemp(join(tmpdir(), 'liquidus-backup-'))
  try {
    const begin = await beginOf(client)
    await putText(tar, BEGIN, begin)
    const rows: Record<string, number> = {}
    for (const table of begin.tables) {
      const file = join(passing, 'table')
      const copying = client.query(copyTo(`COPY ${copied(table)} TO STDOUT`))
      await pipeline(copying, createWriteStream(file))
      await putFile(tar, TABLES + table.name, file)
      rows[table.name] = copying.rowCount
    }
    const heads = await client.query<{ id: string; headHash: string }>('SELECT "id", "headHash" FROM "Trail"')
    let files = 0
    const held = (await exists(evidence)) ? storedHashes(evidence) : []
    for await (const sha256 of held)
      // What no row names is swept away in time, perhaps just now.
      if (await putFile(tar, EVIDENCE + sha256, contentPath(evidence, sha256))) files += 1
    const end = {
      rows,
      files,
      heads: Object.fromEntries(heads.rows.map(({ id, headHash }) => [id, headHash])),
    }
    await putText(tar, END, end)
    tar.finalize()
    return end
  } catch (error) {
    tar.destroy(error as Error)
    throw error
  } finally {
    await rm(passing, { recursive: true, force: true })
  }
}

async function beginOf(client: Client): Promise<Begin> {
  const { rows } = await client.query<Begin['migrations'][number]>(
    `SELECT "migration_name" AS "name", "checksum" FROM "_prisma_migrations"
     WHERE "rolled_back_at" IS NULL AND "finished_at" IS NOT NULL ORDER BY "migration_name"`,
  )
  return { format: FORMAT, migrations: rows, tables: await tablesInOrder(client) }
}

const putText = (tar: Pack, name: string, content: Begin | End): Promise<void> =>
  new Promise((resolve, reject) => {
    tar.entry({ name, mode: 0o600 }, JSON.stringify(content), (error) => (error ? reject(error) : resolve()))
  })

/** Says whether the file was there. */
async function putFile(tar: Pack, name: string, path: string): Promise<boolean> {
  const found = await stat(path).catch(() => undefined)
  if (!found) return false
  await pipeline(createReadStream(path), tar.entry({ name, size: found.size, mode: 0o600 }))
  return true
}

async function syncFile(path: string): Promise<void> {
  const file = await open(path, 'r')
  await file.sync().finally(() => file.close())
}

const exists = (path: string): Promise<boolean> =>
  stat(path).then(
    () => true,
    () => false,
  )
