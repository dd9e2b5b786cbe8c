import { expect, test } from 'vitest'
import { isSameOrigin } from '@/app/same-origin'

const sentWith = (headers: Record<string, string>) =>
  isSameOrigin(
    new Request('http://liquidus.example/x', { headers: { host: 'liquidus.example', ...headers } }),
  )

// Fetch metadata (W3C) section 2.3; RFC 6454 section 7.3 for the origin "null".
test.each([
  [{ 'sec-fetch-site': 'same-origin' }, true],
  [{ 'sec-fetch-site': 'same-site' }, false],
  [{ 'sec-fetch-site': 'cross-site', origin: 'http://liquidus.example' }, false],
  [{ 'sec-fetch-site': 'none' }, false],
  [{ origin: 'http://liquidus.example' }, true],
  [{ origin: 'http://liquidus.example.evil.example' }, false],
  [{ origin: 'null' }, false],
  [{}, false],
])('a form sent with %j is ours: %s', (headers, ours) => expect(sentWith(headers)).toBe(ours))
