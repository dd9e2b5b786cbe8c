import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { runningDatabaseUrl, startEmbeddedServer, type EmbeddedServer } from '@/lib/db/embedded-server'
import type { Settings } from '@/lib/settings/settings'
import { StartRefused } from '@/lib/settings/start-refused'
import { readSettingsWithFile } from '@/scripts/settings-with-file'

/** The installation that this folder's settings name. */
export interface Installation {
  /** Of its database, which runs. */
  readonly url: string
  readonly dataFolder: string
}

/** Does something with the installation, whether the app runs or not; its private database is started for it, but never made. */
export async function withInstallation<Result>(
  work: (installation: Installation) => Promise<Result>,
): Promise<Result> {
  const settings = settingsInUse()
  const { dataFolder, databaseUrl } = settings
  const running = databaseUrl ?? runningDatabaseUrl(dataFolder)
  return running
    ? work(usedHere(running, dataFolder))
    : whileServed(existingFolder(settings), (url) => work(usedHere(url, dataFolder)))
}

/** The same where there must be no installation yet: a private database is made in a folder that holds none. */
export async function withNewPlace<Result>(work: (place: Installation) => Promise<Result>): Promise<Result> {
  const { dataFolder, databaseUrl } = settingsInUse()
  if (databaseUrl) return work(usedHere(databaseUrl, dataFolder))
  if (hasDatabase(dataFolder))
    throw new StartRefused(
      `There is an installation in ${dataFolder} already. Name a new folder in LIQUIDUS_DATA.`,
    )
  return whileServed(dataFolder, (url) => work(usedHere(url, dataFolder)))
}

function settingsInUse(): Settings {
  const settings = readSettingsWithFile()
  process.env.LIQUIDUS_DATA = settings.dataFolder
  return settings
}

function usedHere(url: string, dataFolder: string): Installation {
  process.env.DATABASE_URL = url
  return { url, dataFolder }
}

async function whileServed<Result>(
  dataFolder: string,
  work: (url: string) => Promise<Result>,
): Promise<Result> {
  const server: EmbeddedServer = await startEmbeddedServer(dataFolder)
  try {
    return await work(server.url)
  } finally {
    await server.stop()
  }
}

const hasDatabase = (dataFolder: string): boolean => existsSync(join(dataFolder, 'postgres', 'PG_VERSION'))

function existingFolder({ dataFolder }: Settings): string {
  if (hasDatabase(dataFolder)) return dataFolder
  throw new StartRefused(
    `There is no installation in ${dataFolder}. Name its folder in LIQUIDUS_DATA, or its database in DATABASE_URL.`,
  )
}

/** Tables or columns that are not there: the database is not of this version. */
const OTHER_VERSION = new Set(['42P01', '42703'])

/** Why something could not be done, for whoever runs it. */
export function notDone(error: unknown): string {
  if (error instanceof StartRefused) return error.message
  if (OTHER_VERSION.has(String((error as { code?: unknown }).code)))
    return 'The database is of another version. Start this Liquidus once, which brings it up to date.'
  return String((error as Error).stack)
}
