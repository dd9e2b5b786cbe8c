import { randomBytes } from 'node:crypto'
import { linkSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { readIfThere } from '@/lib/settings/read-if-there'

/**
 * A random secret that an installation keeps in its data folder, readable by its owner only.
 * Made at first use; two processes asking at once get the same one.
 */
export function keptSecret(dataFolder: string, name: string): string {
  const path = join(dataFolder, name)
  const kept = readIfThere(path)?.trim()
  if (kept) return kept
  const aside = `${path}.${process.pid}`
  writeFileSync(aside, `${randomBytes(32).toString('base64url')}\n`, { mode: 0o600, flush: true })
  try {
    linkSync(aside, path)
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error
  } finally {
    rmSync(aside, { force: true })
  }
  return readFileSync(path, 'utf8').trim()
}
