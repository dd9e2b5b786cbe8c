import { expect, test } from 'vitest'
import config from '@/next.config'

// OWASP ASVS 5.0.0 V3.4.6: a page that takes signatures must not be shown in another site's frame.
test('every answer says that no other site may frame it', async () => {
  const [rule, ...others] = (await config.headers?.()) ?? []
  // What comes later takes the place of the same header before it, so it must say as much.
  for (const { key, value } of others.flatMap(({ headers }) => headers)) {
    expect(key).toBe('Content-Security-Policy')
    expect(value).toContain("frame-ancestors 'none'")
  }
  expect(rule?.source).toBe('/:path*')
  const headers = Object.fromEntries(rule?.headers.map(({ key, value }) => [key, value]) ?? [])
  expect(headers['Content-Security-Policy']).toContain("frame-ancestors 'none'")
  expect(headers).toMatchObject({ 'X-Frame-Options': 'DENY', 'X-Content-Type-Options': 'nosniff' })
})
