import * as crypto from 'node:crypto'
import type { Sha256 } from '@/shared/trail/sha256'

/** One call for the whole digest, in Node 20.12 and later; half as slow again without it. */
const { hash } = crypto as {
  hash?: (algorithm: string, data: Uint8Array | string, encoding: 'hex') => string
}

/** The server's own SHA-256, some ten times as fast as the one in plain JavaScript. */
export const nativeSha256: Sha256 = (bytes) =>
  hash ? hash('sha256', bytes, 'hex') : crypto.createHash('sha256').update(bytes).digest('hex')
