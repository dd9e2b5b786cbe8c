import { readdir, rename, rm, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { asidePath, contentPath, hashPutAside, passingFolder } from './evidence-paths'
import { storedHashes } from './stored-hashes'

export type SweepResult = {
  readonly removedFiles: number
  readonly removedBytes: number
  /** Uploads that broke off and were never finished. */
  readonly removedUnfinished: number
}

export type SweepOptions = {
  /** Hashes that some record names; they stay whatever their age. */
  readonly referenced: ReadonlySet<string>
  /** Content younger than this stays: someone may be about to attach what they just sent. */
  readonly olderThanMs: number
  /** The present time, in milliseconds since 1970. */
  readonly now: number
}

/** Removes content that no record names, and unfinished uploads, when they are older than the age given. */
export async function sweepEvidence(folder: string, options: SweepOptions): Promise<SweepResult> {
  await restoreWhatWasPutAside(folder)
  const removedUnfinished = await removeUnfinished(folder, options)
  let removedFiles = 0
  let removedBytes = 0
  for await (const sha256 of storedHashes(folder)) {
    if (options.referenced.has(sha256)) continue
    const bytes = await removeIfOld(folder, sha256, options)
    if (bytes === undefined) continue
    removedFiles += 1
    removedBytes += bytes
  }
  return { removedFiles, removedBytes, removedUnfinished }
}

/** A sweep that was killed may have left content aside; it belongs back in its place. */
async function restoreWhatWasPutAside(folder: string): Promise<void> {
  for (const name of await readdir(passingFolder(folder))) {
    const sha256 = hashPutAside(name)
    if (sha256) await rename(asidePath(folder, sha256), contentPath(folder, sha256))
  }
}

async function removeUnfinished(folder: string, options: SweepOptions): Promise<number> {
  let removed = 0
  for (const name of await readdir(passingFolder(folder))) {
    const path = join(passingFolder(folder), name)
    const age = await ageAndSize(path, options.now)
    if (!age || age.ms < options.olderThanMs) continue
    await rm(path, { force: true })
    removed += 1
  }
  return removed
}

/**
 * Puts the file aside before looking at its age a last time. Someone who sends the same content
 * meanwhile either marked it as wanted before the move, and it goes back, or does not
 * find it any more, and stores it anew.
 */
async function removeIfOld(
  folder: string,
  sha256: string,
  options: SweepOptions,
): Promise<number | undefined> {
  const path = contentPath(folder, sha256)
  const before = await ageAndSize(path, options.now)
  if (!before || before.ms < options.olderThanMs) return undefined
  const aside = asidePath(folder, sha256)
  await rename(path, aside)
  const after = await ageAndSize(aside, options.now)
  if (after && after.ms < options.olderThanMs) {
    await rename(aside, path)
    return undefined
  }
  await rm(aside, { force: true })
  return before.size
}

async function ageAndSize(path: string, now: number): Promise<{ ms: number; size: number } | undefined> {
  const found = await stat(path).catch(() => undefined)
  return found && { ms: now - found.mtimeMs, size: found.size }
}
