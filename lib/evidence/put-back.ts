import { createHash, randomUUID } from 'node:crypto'
import { open, rm } from 'node:fs/promises'
import { join } from 'node:path'
import { renameDurably } from './durable-rename'
import { contentPath, passingFolder } from './evidence-paths'

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
  const hash = createHash('sha256')
  try {
    const file = await open(arriving, 'wx', 0o440)
    try {
      for await (const chunk of source) {
        hash.update(chunk)
        await file.writeFile(chunk)
      }
      await file.sync()
    } finally {
      await file.close()
    }
    const found = hash.digest('hex')
    if (found !== sha256) throw new Error(`the file ${sha256} gives another hash, ${found}`)
    await renameDurably(arriving, path)
  } finally {
    await rm(arriving, { force: true })
  }
}
