import { readdir } from 'node:fs/promises'
import { join } from 'node:path'
import { contentPath } from '@/lib/evidence/evidence-paths'

/** The hashes of all content that a store of evidence holds, in order. */
export async function keptFiles(folder: string): Promise<string[]> {
  const names = await readdir(folder, { recursive: true }).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return []
    throw error
  })
  return names
    .map((name) => name.split(/[\\/]/).at(-1) ?? '')
    .filter(
      (name, at) => /^[0-9a-f]{64}$/.test(name) && join(folder, names[at]!) === contentPath(folder, name),
    )
    .sort()
}
