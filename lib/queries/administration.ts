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
  readonly verification: VerificationFacts
}

/** What the nightly verification last found of all trails. */
export interface VerificationFacts {
  readonly trails: number
  /** Of those, how many it has looked at. */
  readonly verified: number
  readonly broken: number
  /** Where time runs backwards. */
  readonly stepped: number
  /** When the one that was looked at longest ago was. */
  readonly oldest: Date | null
  readonly newest: Date | null
  /** The night's work does not come through: a trail was not looked at for a day and a half. */
  readonly isLate: boolean
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
  trails: bigint
  verified: bigint
  broken: bigint
  stepped: bigint
  oldest: Date | null
  newestVerified: Date | null
  late: boolean | null
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
           (SELECT "headHash" FROM "Trail" WHERE "id" = ${INSTALLATION_TRAIL}) AS "hash",
           (SELECT count(*) FROM "Trail") AS "trails",
           found.*
    FROM (SELECT count(*) AS "verified", count(*) FILTER (WHERE NOT "intact") AS "broken",
                 count(*) FILTER (WHERE "clockSteps" > 0) AS "stepped",
                 min("at") AS "oldest", max("at") AS "newestVerified",
                 min("at") < now() - interval '36 hours' AS "late" FROM "Verification") AS found`
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
    verification: {
      trails: Number(row.trails),
      verified: Number(row.verified),
      broken: Number(row.broken),
      stepped: Number(row.stepped),
      oldest: row.oldest,
      newest: row.newestVerified,
      isLate: row.late ?? false,
    },
  }
}
