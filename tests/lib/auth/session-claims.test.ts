import { expect, test } from 'vitest'
import { claimsInForce } from '@/lib/auth/session-claims'

const SIGNED_IN_AT = 1_774_000_000
const claims = {
  personId: '0196a8c4-1f00-7000-8000-000000000001',
  sessionId: '0196a8c4-1f00-7000-8000-000000000002',
  credentialEpoch: 1,
  signedInAt: SIGNED_IN_AT,
}

// NIST SP 800-63B, section 4.2.3 (AAL2): asked again at least every 12 hours, whatever the person does.
test.each([
  [0, true],
  [12 * 3600 - 1, true],
  [12 * 3600, false],
  [30 * 86_400, false],
])('%i s after the sign-in a session lasts: %s', (after, lasts) => {
  // A renewed cookie has a later end of its own, which changes nothing.
  const renewed = { ...claims, iat: SIGNED_IN_AT + after, exp: SIGNED_IN_AT + after + 30 * 86_400 }
  expect(claimsInForce(renewed, SIGNED_IN_AT + after) !== undefined).toBe(lasts)
})

test.each([
  null,
  {},
  { ...claims, personId: 'nobody' },
  { ...claims, signedInAt: 'now' },
  { ...claims, sessionId: undefined },
])('what is no session is none: %j', (decoded) =>
  expect(claimsInForce(decoded, SIGNED_IN_AT)).toBeUndefined(),
)
