import { randomUUID } from 'node:crypto'
import { rm } from 'node:fs/promises'
import { join } from 'node:path'
import { renameDurably } from './durable-rename'
import { contentPath, passingFolder } from './evidence-paths'
import { writeHashed } from './write-hashed'

/**
 * Puts content of a backup back under its hash. Which kinds are kept was decided when it was first taken. Error when the
 * bytes give another hash, or the name is none; nothing of it stays then.
 */
export async function putBack(
  folder: string,
  sha256: string,
  source: AsyncIterable<Uint8Array>,
): Promise<void> {
  const path = contentPath(folder, sha256)
  const arriving = join(passingFolder(folder), `${randomUUID()}.arriving`)
  try {
    const written = await writeHashed(source, arriving)
    if (written.sha256 !== sha256) throw new Error(`the file ${sha256} gives another hash, ${written.sha256}`)
    await renameDurably(arriving, path)
  } finally {
    await rm(arriving, { force: true })
  }
}
