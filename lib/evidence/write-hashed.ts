import { createHash } from 'node:crypto'
import { open } from 'node:fs/promises'

/**
 * Writes content into a new file as it arrives, until it is safely on disk, and answers with the SHA-256 of its bytes and
 * how many there were.
 *
 * @param refuse throws where the content has grown too large
 */
export async function writeHashed(
  source: AsyncIterable<Uint8Array>,
  path: string,
  refuse?: (size: number) => void,
): Promise<{ sha256: string; size: number }> {
  const hash = createHash('sha256')
  let size = 0
  const file = await open(path, 'wx', 0o440)
  try {
    for await (const chunk of source) {
      size += chunk.length
      refuse?.(size)
      hash.update(chunk)
      await file.writeFile(chunk)
    }
    await file.sync()
  } finally {
    await file.close()
  }
  return { sha256: hash.digest('hex'), size }
}
