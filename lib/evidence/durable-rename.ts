import { mkdir, open, rename } from 'node:fs/promises'
import { dirname } from 'node:path'

/**
 * Moves a file, already synced, to its place so that it is there after a power cut:
 * the folders are made and written out as well. Within one disk the move is atomic.
 */
export async function renameDurably(from: string, to: string): Promise<void> {
  const folder = dirname(to)
  const firstMade = await mkdir(folder, { recursive: true })
  await rename(from, to)
  await syncFolder(folder)
  if (!firstMade) return
  for (let made = folder; made.length >= firstMade.length; made = dirname(made))
    await syncFolder(dirname(made))
}

/** Writes out a folder's list of names. Some systems cannot open a folder; they keep names by themselves. */
export async function syncFolder(folder: string): Promise<void> {
  if (process.platform === 'win32') return
  const handle = await open(folder, 'r')
  try {
    await handle.sync()
  } finally {
    await handle.close()
  }
}
