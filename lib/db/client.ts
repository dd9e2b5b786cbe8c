import { PrismaPg } from '@prisma/adapter-pg'
import { Prisma, PrismaClient } from '@/lib/db/generated/client'
import { urlInUse } from '@/lib/db/url-in-use'
import { log } from '@/lib/log/log'
import { readSettings } from '@/lib/settings/settings'

/** Kept on the global object: a development server loads this module anew at every change. */
const kept = globalThis as { liquidusDatabase?: PrismaClient | undefined; liquidusTables?: string }

const TABLES = Object.keys(Prisma.ModelName).join(' ')

/** The one client of this process, with its pool of connections; it connects at the first query. */
export function database(): PrismaClient {
  if (kept.liquidusTables !== TABLES) letGoOfOlderClient()
  return (kept.liquidusDatabase ??= connect())
}

/** Closes the pool, so that a process that only had some work to do can end. */
export async function closeDatabase(): Promise<void> {
  const client = kept.liquidusDatabase
  kept.liquidusDatabase = undefined
  await client?.$disconnect()
}

/** A client generated before the schema gained a table does not know it. */
function letGoOfOlderClient(): void {
  void closeDatabase()
  kept.liquidusTables = TABLES
}

/** The server ends a statement by itself; one that hangs and cannot is given up by us, a little later. */
const LONGEST_STATEMENT_MS = 30_000

function connect(): PrismaClient {
  const { databasePoolSize } = readSettings(process.env)
  const adapter = new PrismaPg(
    {
      connectionString: urlInUse(),
      max: databasePoolSize,
      connectionTimeoutMillis: 10_000,
      statement_timeout: LONGEST_STATEMENT_MS,
      query_timeout: LONGEST_STATEMENT_MS + 5_000,
    },
    {
      onPoolError: (error) => log.warn('A database connection was lost while idle.', { error }),
      onConnectionError: (error) => log.warn('A database connection was lost.', { error }),
    },
  )
  return new PrismaClient({ adapter, errorFormat: 'minimal' })
}
