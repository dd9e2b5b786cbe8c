import { sha256 as digest } from '@noble/hashes/sha2.js'
import { bytesToHex } from '@noble/hashes/utils.js'

/** A SHA-256 function: bytes, or text taken as UTF-8, to 64 lower-case hexadecimal digits. */
export type Sha256 = (bytes: Uint8Array | string) => string

/** Text to UTF-8 bytes. */
const utf8 = new TextEncoder()

/**
 * SHA-256 in plain JavaScript, alike in browser and server.
 * A server has a faster native one of the same type. Source: FIPS 180-4.
 */
export const sha256: Sha256 = (bytes) =>
  bytesToHex(digest(typeof bytes === 'string' ? utf8.encode(bytes) : bytes))
