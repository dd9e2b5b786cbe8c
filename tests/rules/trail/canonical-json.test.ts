import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import reference from '../../reference/trail/canonical-json.json'
import { canonicalJson, isWellFormedText, type JsonValue } from '@/shared/trail/canonical-json'
import { sha256 } from '@/shared/trail/sha256'

const numberOfBits = (bits: string): number => {
  const view = new DataView(new ArrayBuffer(8))
  view.setBigUint64(0, BigInt(`0x${bits}`))
  return view.getFloat64(0)
}

describe('the test vectors of RFC 8785', () => {
  test.each(reference.texts)('$id', ({ json, canonical, utf8Hex, sha256: digest }) => {
    const text = canonicalJson(JSON.parse(json) as JsonValue)
    expect(text).toBe(canonical)
    expect(Buffer.from(text, 'utf8').toString('hex')).toBe(utf8Hex)
    expect(sha256(text)).toBe(digest)
  })

  // Appendix B writes minus zero as "0"; it is refused here (see below), so its row is left out.
  const numbers = [...reference.numbers.rows, ...reference.furtherNumbers.rows].filter(
    ({ bits }) => bits !== '8000000000000000',
  )
  test.each(numbers)('the number $bits is written $text', ({ bits, text }) => {
    expect(canonicalJson(numberOfBits(bits))).toBe(text)
  })

  test('names sort by UTF-16 code units, not by code points', () => {
    expect(canonicalJson(JSON.parse(reference.keyOrder.json) as JsonValue)).toBe(reference.keyOrder.canonical)
  })
})

describe('what has no canonical form is refused, with its place', () => {
  const circular: Record<string, unknown> = {}
  circular['self'] = circular
  test.each<[string, unknown, RegExp]>([
    // RFC 8785 section 3.2.2.3 and Appendix B: these bit patterns are errors.
    ['NaN', { a: [1, numberOfBits('7fffffffffffffff')] }, /at \$\.a\[1\] is NaN/],
    ['infinity', numberOfBits('7ff0000000000000'), /at \$ is Infinity/],
    ['minus infinity', numberOfBits('fff0000000000000'), /at \$ is -Infinity/],
    ['minus zero', { z: numberOfBits('8000000000000000') }, /at \$\.z is minus zero/],
    ['a lone surrogate in text', { t: 'a\ud800' }, /at \$\.t holds half of a character pair/],
    ['a lone surrogate in a name', { '\udc00': 1 }, /half of a character pair/],
    ['undefined', { u: undefined }, /at \$\.u is undefined/],
    ['a hole in a list', [1, , 3], /at \$\[1\] is undefined/],
    ['a big integer', 1n, /is bigint/],
    ['a function', () => 1, /is function/],
    ['a date', new Date(0), /not plain data/],
    ['a map', new Map(), /not plain data/],
    ['a value that contains itself', circular, /contains itself/],
  ])('%s', (_, value, message) => {
    const write = () => canonicalJson(value as JsonValue)
    expect(write).toThrow(RangeError)
    expect(write).toThrow(message)
  })
})

test('a member called __proto__ is data like any other', () => {
  expect(canonicalJson(JSON.parse('{"b":1,"__proto__":{"a":2}}') as JsonValue)).toBe(
    '{"__proto__":{"a":2},"b":1}',
  )
})

test.each([
  ['plain', true],
  ['\ud83d\ude02', true],
  ['\ud83d', false],
  ['\ude02\ud83d', false],
])('%j is well-formed: %s', (text, wellFormed) => {
  expect(isWellFormedText(text)).toBe(wellFormed)
})

/** Any JSON value; passing it through JSON turns minus zero into zero. */
const anyJson = fc
  .jsonValue({ stringUnit: 'grapheme' })
  .map((value) => JSON.parse(JSON.stringify(value)) as JsonValue)

test('canonical JSON reads back as the same value, and its text is a fixed point', () => {
  fc.assert(
    fc.property(anyJson, (value) => {
      const text = canonicalJson(value)
      expect(JSON.parse(text)).toEqual(value)
      expect(canonicalJson(JSON.parse(text) as JsonValue)).toBe(text)
    }),
  )
})

test('the order in which members were entered leaves no trace', () => {
  fc.assert(
    fc.property(fc.dictionary(fc.string({ unit: 'grapheme' }), fc.integer()), (members) => {
      const reversed = Object.fromEntries(Object.entries(members).reverse())
      expect(canonicalJson(reversed)).toBe(canonicalJson(members))
    }),
  )
})
