import { database } from '@/lib/db/client'
import { INSTALLATION_TRAIL } from '@/lib/trail/append-entry'

/** The installation as its administrator needs to know it: no decision is in it. */
export interface InstallationFacts {
  readonly serverVersion: string
  readonly databaseBytes: number
  readonly migrations: number
  readonly newestMigration: string
  readonly programmes: number
  readonly people: number
  readonly files: number
  readonly fileBytes: number
  readonly trail: { readonly seq: number; readonly hash: string }
}

interface Row {
  server: string
  bytes: bigint
  migrations: bigint
  newest: string | null
  programmes: bigint
  people: bigint
  files: bigint
  fileBytes: bigint
  seq: number | null
  hash: string | null
}

/** One statement. */
export async function readInstallation(): Promise<InstallationFacts> {
  const [row] = await database().$queryRaw<Row[]>`
    SELECT current_setting('server_version') AS "server",
           pg_database_size(current_database()) AS "bytes",
           (SELECT count(*) FROM "_prisma_migrations" WHERE "finished_at" IS NOT NULL) AS "migrations",
           (SELECT max("migration_name") FROM "_prisma_migrations" WHERE "finished_at" IS NOT NULL) AS "newest",
           (SELECT count(*) FROM "Programme") AS "programmes",
           (SELECT count(*) FROM "Person" WHERE "disabledAt" IS NULL) AS "people",
           (SELECT count(*) FROM "StoredFile") AS "files",
           (SELECT coalesce(sum("size"), 0) FROM "StoredFile")::bigint AS "fileBytes",
           (SELECT "seq" FROM "Trail" WHERE "id" = ${INSTALLATION_TRAIL}) AS "seq",
           (SELECT "headHash" FROM "Trail" WHERE "id" = ${INSTALLATION_TRAIL}) AS "hash"`
  if (!row) throw new Error('The database answered nothing about itself.')
  return {
    serverVersion: row.server,
    databaseBytes: Number(row.bytes),
    migrations: Number(row.migrations),
    newestMigration: row.newest ?? '',
    programmes: Number(row.programmes),
    people: Number(row.people),
    files: Number(row.files),
    fileBytes: Number(row.fileBytes),
    trail: { seq: row.seq ?? 0, hash: row.hash ?? '' },
  }
}
