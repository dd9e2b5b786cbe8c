import { randomBytes } from 'node:crypto'
import { nativeSha256 } from '@/lib/trail/native-sha256'

/** 256 bits, so that its hash can be looked up without salt or delay. */
const TOKEN_BYTES = 32
const TOKEN = /^[A-Za-z0-9_-]{43}$/

/** A token for a machine, to be shown once; only its hash is kept. */
export function newMachineToken(): { readonly token: string; readonly tokenHash: string } {
  const token = randomBytes(TOKEN_BYTES).toString('base64url')
  return { token, tokenHash: nativeSha256(token) }
}

/**
 * The hash of the token an `Authorization` header carries; undefined when it carries none.
 * Source of the form: RFC 6750 section 2.1.
 */
export function tokenHashFrom(authorization: string | null): string | undefined {
  const [, token] = /^Bearer +(\S+) *$/i.exec(authorization ?? '') ?? []
  return token && TOKEN.test(token) ? nativeSha256(token) : undefined
}
