import { accessSync, constants, mkdirSync } from 'node:fs'
import { StartRefused } from '@/lib/settings/start-refused'

/**
 * Makes the data folder, for its owner only; where root starts the app, others may pass through it
 * (not list it), because the database server runs as a user of its own.
 */
export function prepareDataFolder(dataFolder: string): void {
  try {
    mkdirSync(dataFolder, { recursive: true, mode: process.getuid?.() === 0 ? 0o711 : 0o700 })
    accessSync(dataFolder, constants.R_OK | constants.W_OK | constants.X_OK)
  } catch (error) {
    const reason = (error as NodeJS.ErrnoException).code
    throw new StartRefused(
      `The data folder ${dataFolder} cannot be used (${reason}). Make it writable, or name another in LIQUIDUS_DATA.`,
      { cause: error },
    )
  }
}
