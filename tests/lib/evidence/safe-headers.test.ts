import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { nameForSaving, safeHeaders } from '@/lib/evidence/safe-headers'

const stored = { sha256: 'ab'.repeat(32), size: 12, mediaType: 'text/plain' }
const disposition = (name: string, mediaType = 'text/plain'): string =>
  safeHeaders({ ...stored, mediaType }, name)['Content-Disposition']!

test('content is saved, never run, and its type not guessed at', () => {
  expect(safeHeaders({ ...stored, mediaType: 'application/pdf' }, 'report.pdf')).toEqual({
    'Content-Type': 'application/pdf',
    'Content-Length': '12',
    'Content-Disposition': 'attachment; filename=report.pdf',
    'Content-Security-Policy': "sandbox; default-src 'none'; frame-ancestors 'none'; base-uri 'none'",
    'X-Content-Type-Options': 'nosniff',
    'Cross-Origin-Resource-Policy': 'same-origin',
    'Cache-Control': 'private, max-age=31536000, immutable',
    ETag: `"${stored.sha256}"`,
  })
  expect(safeHeaders(stored, 'a.txt')['Content-Type']).toBe('text/plain; charset=utf-8')
})

describe('the name in the header', () => {
  // RFC 6266 section 5 gives the euro sign as %e2%82%ac; the case of the digits is free.
  test('a euro sign', () => {
    expect(disposition('€ rates.txt')).toBe(
      `attachment; filename="? rates.txt"; filename*=UTF-8''%E2%82%AC%20rates.txt`,
    )
  })
  test('quotes, backslash, percent and apostrophe cannot end or bend it', () => {
    expect(disposition(`a"b%41'(1)*.txt`)).toBe(
      `attachment; filename="a_b%41'(1)_.txt"; filename*=UTF-8''a_b%2541%27%281%29_.txt`,
    )
  })
  test('line breaks cannot start a header', () => {
    expect(disposition('a\r\nSet-Cookie: x=1.txt')).not.toMatch(/[\r\n]/)
  })
})

describe('the name for saving', () => {
  test.each([
    ['../../etc/passwd', 'text/plain', 'passwd.txt'],
    ['C:\\temp\\curve.csv', 'text/csv', 'curve.csv'],
    ['report.html', 'text/plain', 'report.html.txt'],
    ['drawing.svg', 'image/png', 'drawing.svg.png'],
    ['invoice\u202efdp.exe', 'application/pdf', 'invoicefdp.exe.pdf'],
    ['.htaccess', 'text/plain', 'htaccess.txt'],
    ['', 'image/png', 'evidence.png'],
    ['...', 'image/png', 'evidence.png'],
    ['a.', 'image/png', 'a.png'],
    ['Messung März.JPG', 'image/jpeg', 'Messung März.jpg'],
    ['top.gbr', 'text/plain', 'top.gbr'],
    ['a<b>|c?.txt', 'text/plain', 'a_b__c_.txt'],
    ['half\ud800.txt', 'text/plain', 'half.txt'],
    ['thing.xyz', 'application/unknown', 'thing.xyz.bin'],
  ])('%j as %s: %s', (name, mediaType, saved) => {
    expect(nameForSaving(name, mediaType)).toBe(saved)
  })
  test('a very long one is cut, its ending kept', () => {
    expect(nameForSaving(`${'ö'.repeat(500)}.csv`, 'text/csv')).toBe(`${'ö'.repeat(120)}.csv`)
  })
})

test('law: any name gives a header value of printable ASCII that is read back as the saved name', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (name) => {
      const value = disposition(name)
      expect(value).toMatch(/^[ -~]+$/)
      const saved = nameForSaving(name, 'text/plain')
      expect(nameRead(value)).toBe(saved)
      expect(saved).toMatch(/\.[a-z0-9]+$/)
    }),
  )
})

/** The name that a reader of RFC 6266 takes from the header: the one in UTF-8 where there is one, else a quoted text or a token. */
function nameRead(value: string): string | undefined {
  const [, encoded] = /; filename\*=UTF-8''([A-Za-z0-9!#$&+.^_`|~%-]+)$/.exec(value) ?? []
  if (encoded !== undefined) return decodeURIComponent(encoded)
  const [, quoted, token] =
    /^attachment; filename=(?:"((?:[^"\\]|\\.)*)"|([!#$%&'*+.^_`|~0-9A-Za-z-]+))$/.exec(value) ?? []
  return quoted?.replace(/\\(.)/g, '$1') ?? token
}
