import { unzipSync, type UnzipFileInfo } from 'fflate'
import { Refused } from '@/shared/refused'

/** What an archive of board files may hold; beyond it nothing is unpacked. */
export const UNPACK_LIMITS = {
  files: 200,
  fileBytes: 32 * 1024 * 1024,
  totalBytes: 64 * 1024 * 1024,
} as const

export interface UnpackedFile {
  readonly name: string
  readonly bytes: Uint8Array
}

/**
 * The files of a zip archive, by their names without folders. Refuses what is
 * no archive, holds too much, or says less of its size than it unpacks to.
 */
export function unpack(
  archive: Uint8Array,
  limits: Record<keyof typeof UNPACK_LIMITS, number> = UNPACK_LIMITS,
): UnpackedFile[] {
  let [files, total] = [0, 0]
  const wanted = ({ name, originalSize }: UnzipFileInfo): boolean => {
    if (name.endsWith('/') || isBeside(name)) return false
    files++
    total += originalSize
    if (files > limits.files) throw new Refused(`The archive holds more than ${limits.files} files.`)
    if (originalSize > limits.fileBytes)
      throw new Refused(`${baseName(name)} unpacks to more than ${inMiB(limits.fileBytes)}.`)
    if (total > limits.totalBytes)
      throw new Refused(`The archive unpacks to more than ${inMiB(limits.totalBytes)}.`)
    return true
  }
  try {
    return Object.entries(unzipSync(archive, { filter: wanted })).map(([name, bytes]) => ({
      name: baseName(name),
      bytes,
    }))
  } catch (error) {
    if (error instanceof Refused) throw error
    throw new Refused('The file is no sound zip archive. Pack the board’s files again.')
  }
}

const inMiB = (bytes: number): string => `${bytes / 1024 / 1024} MiB`
const baseName = (name: string): string => name.split(/[/\\]/).at(-1)!

/** What some systems pack beside the files themselves. */
const isBeside = (name: string): boolean => /(^|\/)(__MACOSX\/|\.)/.test(name)
