import { readdir } from 'node:fs/promises'
import { join } from 'node:path'

/** The hashes of all content that the store in a folder holds. */
export async function* storedHashes(folder: string): AsyncGenerator<string> {
  for (const first of await readdir(folder)) {
    if (!/^[0-9a-f]{2}$/.test(first)) continue
    for (const second of await readdir(join(folder, first))) {
      for (const name of await readdir(join(folder, first, second))) {
        if (/^[0-9a-f]{64}$/.test(name)) yield name
      }
    }
  }
}
