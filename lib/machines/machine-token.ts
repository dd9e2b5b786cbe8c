import { hashOfToken } from '@/lib/auth/secret-token'

/**
 * The hash of the token an `Authorization` header carries; undefined when it carries none.
 * Source of the form: RFC 6750 section 2.1.
 */
export function tokenHashFrom(authorization: string | null): string | undefined {
  const [, token] = /^Bearer +(\S+) *$/i.exec(authorization ?? '') ?? []
  return token === undefined ? undefined : hashOfToken(token)
}
