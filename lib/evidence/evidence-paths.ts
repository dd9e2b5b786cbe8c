import { join } from 'node:path'

const SHA256 = /^[0-9a-f]{64}$/

/** Files on their way in or out; on the same disk, so that a rename is atomic. */
export const passingFolder = (folder: string): string => join(folder, 'passing')

/** Where the content with this hash lies. RangeError for anything but a hash, so that no path can be smuggled in. */
export function contentPath(folder: string, sha256: string): string {
  if (!SHA256.test(sha256))
    throw new RangeError(`"${sha256}" is not a SHA-256 hash in lower-case hexadecimal.`)
  return join(folder, sha256.slice(0, 2), sha256.slice(2, 4), sha256)
}

/** Where a sweep puts content aside before it decides for good. */
export const asidePath = (folder: string, sha256: string): string =>
  join(passingFolder(folder), `aside-${sha256}`)

/** The hash of content that a sweep put aside; undefined for any other name. */
export const hashPutAside = (name: string): string | undefined => /^aside-([0-9a-f]{64})$/.exec(name)?.[1]
