import { createHash, randomUUID } from 'node:crypto'
import { createReadStream } from 'node:fs'
import { mkdir, readFile, rm, stat, utimes } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { type Readable, Transform } from 'node:stream'
import { Refused } from '@/shared/refused'
import type { MediaType } from './content-kind'
import { renameDurably, syncFolder } from './durable-rename'
import { contentPath, passingFolder } from './evidence-paths'
import { decideMediaType } from './media-type'
import { writeHashed } from './write-hashed'

export const LARGEST_FILE_BYTES = 50 * 1024 * 1024

/** Content that the store holds, named by the SHA-256 of its bytes. */
export type StoredContent = { readonly sha256: string; readonly size: number; readonly mediaType: MediaType }

export type PutOptions = {
  readonly maxBytes?: number
  /** As the sender named it: its ending must agree with the content. */
  readonly fileName?: string
}

export type EvidenceStore = {
  readonly folder: string
  /**
   * Takes content as it arrives and answers when it is safely on disk. Content already held
   * is kept once. Refuses, leaving nothing behind, what is empty, too large, or of a kind not kept.
   */
  put(source: AsyncIterable<Uint8Array>, options?: PutOptions): Promise<StoredContent>
  has(sha256: string): Promise<boolean>
  /** A stream of the content; it ends in an error when the bytes on disk no longer give the hash. */
  open(sha256: string): Promise<Readable>
  /** The whole content; an error when it no longer gives the hash. */
  read(sha256: string): Promise<Buffer>
}

/** Content that the store should hold and does not, or holds damaged. */
export class EvidenceDamaged extends Error {
  override readonly name = 'EvidenceDamaged'
}

/** Opens the store in a folder, making it when it is not there. */
export async function openEvidenceStore(folder: string): Promise<EvidenceStore> {
  await mkdir(passingFolder(folder), { recursive: true })
  return {
    folder,
    put: (source, options) => put(folder, source, options),
    has: async (sha256) => (await statIfThere(contentPath(folder, sha256))) !== undefined,
    open: (sha256) => openContent(folder, sha256),
    read: (sha256) => readContent(folder, sha256),
  }
}

async function put(
  folder: string,
  source: AsyncIterable<Uint8Array>,
  { maxBytes = LARGEST_FILE_BYTES, fileName }: PutOptions = {},
): Promise<StoredContent> {
  const arriving = join(passingFolder(folder), `${randomUUID()}.arriving`)
  try {
    const { sha256, size } = await write(source, arriving, maxBytes, fileName)
    const mediaType = await decideMediaType(arriving, size, fileName)
    await keep(arriving, contentPath(folder, sha256), size)
    return { sha256, size, mediaType }
  } catch (error) {
    throw isDiskFull(error)
      ? new Refused('The disk of the server is full. Nothing was stored; tell the administrator.')
      : error
  } finally {
    await rm(arriving, { force: true })
  }
}

async function write(
  source: AsyncIterable<Uint8Array>,
  path: string,
  maxBytes: number,
  fileName: string | undefined,
): Promise<{ sha256: string; size: number }> {
  const written = await writeHashed(source, path, (size) => {
    if (size > maxBytes)
      throw new Refused(`${called(fileName)} is larger than ${megabytes(maxBytes)}, the most that is kept.`)
  })
  if (written.size === 0) throw new Refused(`${called(fileName)} is empty.`)
  return written
}

/**
 * Puts arrived content in its place. Content held already is only marked as wanted
 * now, which keeps a sweep from taking it; if the sweep was quicker, it is moved in anew.
 */
async function keep(arriving: string, path: string, size: number): Promise<void> {
  const held = await statIfThere(path)
  if (held?.size === size && (await markWanted(path))) return syncFolder(dirname(path))
  await renameDurably(arriving, path)
}

async function markWanted(path: string): Promise<boolean> {
  const now = new Date()
  try {
    await utimes(path, now, now)
    return true
  } catch (error) {
    if (isAbsent(error)) return false
    throw error
  }
}

async function openContent(folder: string, sha256: string): Promise<Readable> {
  const path = contentPath(folder, sha256)
  if (!(await statIfThere(path))) throw absent(sha256)
  const hash = createHash('sha256')
  const check = new Transform({
    transform(chunk: Buffer, _encoding, done) {
      hash.update(chunk)
      done(null, chunk)
    },
    flush(done) {
      done(hash.digest('hex') === sha256 ? null : damaged(sha256))
    },
  })
  const file = createReadStream(path)
  file.on('error', (error) => check.destroy(error))
  check.on('close', () => file.destroy())
  return file.pipe(check)
}

async function readContent(folder: string, sha256: string): Promise<Buffer> {
  const path = contentPath(folder, sha256)
  if (!(await statIfThere(path))) throw absent(sha256)
  const bytes = await readFile(path)
  if (createHash('sha256').update(bytes).digest('hex') !== sha256) throw damaged(sha256)
  return bytes
}

const absent = (sha256: string) =>
  new EvidenceDamaged(`The evidence store does not hold ${sha256}. Restore it from a backup.`)
const damaged = (sha256: string) =>
  new EvidenceDamaged(
    `The bytes stored as ${sha256} give another hash: they were altered. Restore them from a backup.`,
  )

async function statIfThere(path: string): Promise<{ size: number } | undefined> {
  try {
    return await stat(path)
  } catch (error) {
    if (isAbsent(error)) return undefined
    throw error
  }
}

const codeOf = (error: unknown): unknown =>
  error instanceof Error && 'code' in error ? error.code : undefined
const isAbsent = (error: unknown): boolean => codeOf(error) === 'ENOENT'
const isDiskFull = (error: unknown): boolean => codeOf(error) === 'ENOSPC' || codeOf(error) === 'EDQUOT'

const called = (fileName: string | undefined): string => (fileName ? `"${fileName}"` : 'The file')
const megabytes = (bytes: number): string =>
  bytes >= 1024 * 1024 ? `${Math.floor(bytes / (1024 * 1024))} MiB` : `${bytes} bytes`
