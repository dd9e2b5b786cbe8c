import { randomBytes } from 'node:crypto'
import { nativeSha256 } from '@/lib/trail/native-sha256'

/** 256 bits, so that its hash can be looked up without salt or delay. */
const TOKEN_BYTES = 32
const TOKEN = /^[A-Za-z0-9_-]{43}$/

/** A token for a machine or a calendar, to be shown once; only its hash is kept. */
export function newSecretToken(): { readonly token: string; readonly tokenHash: string } {
  const token = randomBytes(TOKEN_BYTES).toString('base64url')
  return { token, tokenHash: nativeSha256(token) }
}

/** The hash that a token is kept by; undefined for text that can be no token. */
export const hashOfToken = (text: string): string | undefined =>
  TOKEN.test(text) ? nativeSha256(text) : undefined
