import { createHash } from 'node:crypto'
import type { Sha256 } from '@/shared/trail/sha256'

/** The server's own SHA-256, some ten times as fast as the one in plain JavaScript. */
export const nativeSha256: Sha256 = (bytes) => createHash('sha256').update(bytes).digest('hex')
