import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { readSettings, type Settings } from '@/lib/settings/settings'
import { PROJECT_ROOT } from '@/scripts/project-root'

/** The settings of the environment, and of the file `.env` where there is one. */
export function readSettingsWithFile(): Settings {
  const envFile = join(PROJECT_ROOT, '.env')
  if (existsSync(envFile)) process.loadEnvFile(envFile)
  return readSettings(process.env, PROJECT_ROOT)
}
