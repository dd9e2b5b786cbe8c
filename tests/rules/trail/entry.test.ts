import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { canonicalJson, type JsonValue } from '@/shared/trail/canonical-json'
import { appendEntry, entryHash, entryPreimage, GENESIS_PREVIOUS_HASH } from '@/shared/trail/entry'
import { sha256 } from '@/shared/trail/sha256'

const draft = {
  trailId: 'trail-1',
  at: '2026-03-04T10:11:12.345Z',
  actorId: 'p-1',
  actorName: 'Ines "Nell" Moor',
  command: 'revise-parameter',
  payload: { reason: 'Wider lead', to: 1.05, from: 0.95 },
} as const

test('a first entry: its members, its preimage written out, its hash', () => {
  const entry = appendEntry(undefined, draft, sha256)
  expect(entry).toMatchObject({ seq: 1, previousHash: GENESIS_PREVIOUS_HASH })
  expect(entry.payload).toBe('{"from":0.95,"reason":"Wider lead","to":1.05}')
  expect(entryPreimage(entry)).toBe(
    '{"actorId":"p-1","actorName":"Ines \\"Nell\\" Moor","at":"2026-03-04T10:11:12.345Z","command":"revise-parameter",' +
      '"payload":{"from":0.95,"reason":"Wider lead","to":1.05},' +
      '"previousHash":"0000000000000000000000000000000000000000000000000000000000000000","seq":1,"trailId":"trail-1"}',
  )
  // Computed with Python hashlib over the text above.
  expect(entry.hash).toBe('28dde7447f4e3b739c6ecc4cfb77322838ff04e0cd49b1dd043d66a9e1256fff')
})

test('the next entry points to the one before', () => {
  const first = appendEntry(undefined, draft, sha256)
  const second = appendEntry(first, { ...draft, command: 'sign-gate' }, sha256)
  expect(second).toMatchObject({ seq: 2, previousHash: first.hash })
})

describe('what cannot be recorded is refused', () => {
  test.each([
    ['a time without milliseconds', { at: '2026-03-04T10:11:12Z' }, /not a UTC time/],
    ['a day that does not exist', { at: '2026-02-30T10:11:12.345Z' }, /not a UTC time/],
    ['no actor', { actorId: '' }, /actorId/],
    ['no command', { command: '' }, /command/],
    ['half a character pair in a name', { actorName: 'a\ud800' }, /half of a character pair/],
    ['a payload that JSON cannot hold', { payload: { margin: Number.NaN } }, /NaN/],
  ])('%s', (_, change, message) => {
    const append = () => appendEntry(undefined, { ...draft, ...change }, sha256)
    expect(append).toThrow(RangeError)
    expect(append).toThrow(message)
  })

  test('an entry for another trail', () => {
    const first = appendEntry(undefined, draft, sha256)
    expect(() => appendEntry(first, { ...draft, trailId: 'trail-2' }, sha256)).toThrow(/belongs to trail-1/)
  })
})

const text = fc.string({ unit: 'grapheme', minLength: 1 })

test('the preimage is the canonical JSON of the entry without its hash, the payload as a value', () => {
  fc.assert(
    fc.property(
      text,
      text,
      text,
      text,
      fc.jsonValue({ stringUnit: 'grapheme' }),
      (trailId, actorId, actorName, command, json) => {
        const payload = JSON.parse(JSON.stringify(json)) as JsonValue
        const { hash, ...entry } = appendEntry(
          undefined,
          { ...draft, trailId, actorId, actorName, command, payload },
          sha256,
        )
        expect(entryPreimage(entry)).toBe(canonicalJson({ ...entry, payload }))
        expect(entryHash(entry, sha256)).toBe(hash)
      },
    ),
  )
})

test('a payload that is not JSON cannot imitate the members behind it', () => {
  const entry = appendEntry(undefined, draft, sha256)
  const tail = `,"previousHash":"${entry.previousHash}","seq":1,"trailId":"trail-1"}`
  const forged = { ...entry, payload: `1${tail.slice(0, -1)}` }
  expect(entryPreimage(forged)).not.toBe(entryPreimage({ ...entry, payload: '1' }))
  fc.assert(
    fc.property(text, text, text, text, (payload, otherPayload, trailId, otherTrailId) => {
      fc.pre(payload !== otherPayload || trailId !== otherTrailId)
      expect(entryPreimage({ ...entry, payload, trailId })).not.toBe(
        entryPreimage({ ...entry, payload: otherPayload, trailId: otherTrailId }),
      )
    }),
  )
})
