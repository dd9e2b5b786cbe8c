import fc from 'fast-check'
import { expect, test } from 'vitest'
import { isUuid, pageFromAddress, textFromAddress } from '@/lib/queries/from-address'

test('a text from an address is never more than a text the database can look for', () => {
  expect(textFromAddress(' lead\0 wire ')).toBe('lead wire')
  expect(textFromAddress('\0')).toBe('')
  expect(textFromAddress('x'.repeat(500))).toHaveLength(100)
  expect([undefined, ['a', 'b'], 7].map((given) => textFromAddress(given))).toEqual(['', '', ''])
})

test.each([
  ['3', 3],
  ['3.7', 3],
  ['-1', 1],
  ['0', 1],
  ['1e30', 100_000],
  ['Infinity', 100_000],
  ['NaN', 1],
  ['two', 1],
  [undefined, 1],
  [['2', '3'], 1],
])('page %j is page %i', (given, page) => expect(pageFromAddress(given)).toBe(page))

test('any page asked for is a page the database can skip to (a 64-bit offset)', () => {
  fc.assert(
    fc.property(fc.string(), (given) => {
      const page = pageFromAddress(given)
      expect(Number.isSafeInteger(page) && page >= 1 && page <= 100_000).toBe(true)
    }),
  )
})

// The form PostgreSQL writes: manual section 8.12. Others it would refuse with an error, not with nothing found.
test.each([
  ['0196a8c4-1f00-7000-8000-000000000001', true],
  ['------------------------------------', false],
  ['000000000000000000000000000000000000', false],
  ['0196a8c4-1f00-7000-8000-000000000001\n', false],
])('%j is a UUID: %s', (given, is) => expect(isUuid(given)).toBe(is))
