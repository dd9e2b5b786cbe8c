import { join } from 'node:path'
import { readIfThere } from '@/lib/settings/read-if-there'
import type { Settings } from '@/lib/settings/settings'

const PORT_LINE = 3

/**
 * Whether the database in use is the private one in the data folder. The start names that one in
 * DATABASE_URL too, so the port that its server wrote down decides.
 */
export function isOwnDatabase({ databaseUrl, dataFolder }: Settings): boolean {
  if (!databaseUrl) return true
  const port = writtenPort(dataFolder)
  const { hostname, port: used } = new URL(databaseUrl)
  return port !== undefined && used === port && (hostname === '127.0.0.1' || hostname === 'localhost')
}

/** The port that the private server wrote down when it started; undefined where none did. */
export const writtenPort = (dataFolder: string): string | undefined =>
  readIfThere(join(dataFolder, 'postgres', 'postmaster.pid'))
    ?.split('\n')
    [PORT_LINE]?.trim()
