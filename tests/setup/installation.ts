import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

/** What an installation keeps: a database, and a folder of files. */
export interface FreshInstallation extends FreshDatabase {
  readonly folder: string
}

/**
 * A database with no rows, or as `makeDatabase` makes it, and an empty folder for files, for one test file.
 * From here on this process keeps its files there. Call in `beforeAll`, and `drop` in `afterAll`.
 */
export async function freshInstallation(
  makeDatabase: () => Promise<FreshDatabase> = freshDatabase,
): Promise<FreshInstallation> {
  const folder = await mkdtemp(join(tmpdir(), 'liquidus-test-'))
  process.env.LIQUIDUS_DATA = folder
  const made = await makeDatabase()
  return {
    ...made,
    folder,
    async drop() {
      await made.drop()
      await rm(folder, { recursive: true, force: true })
    },
  }
}
