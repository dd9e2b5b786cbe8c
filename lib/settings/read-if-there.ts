import { readFileSync } from 'node:fs'

/** A file's text, or undefined where there is no such file. */
export function readIfThere(path: string): string | undefined {
  try {
    return readFileSync(path, 'utf8')
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined
    throw error
  }
}
