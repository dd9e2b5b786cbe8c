import { createHash } from 'node:crypto'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import reference from '../../reference/trail/sha256.json'
import { sha256 } from '@/shared/trail/sha256'

type Row = (typeof reference.rows)[number]

function message(row: Row): Uint8Array | string {
  if (row.hex !== undefined) return Buffer.from(row.hex, 'hex')
  if (row.ascii_repeat === undefined) return row.ascii
  const [text, times] = row.ascii_repeat as [string, number]
  return text.repeat(times)
}

describe('the examples of FIPS 180-4', () => {
  test.each(reference.rows)('$id', (row) => {
    expect(sha256(message(row))).toBe(row.digest)
  })
})

test('agrees with the platform on any text and any bytes', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), fc.uint8Array(), (text, bytes) => {
      expect(sha256(text)).toBe(createHash('sha256').update(text, 'utf8').digest('hex'))
      expect(sha256(bytes)).toBe(createHash('sha256').update(bytes).digest('hex'))
    }),
  )
})
