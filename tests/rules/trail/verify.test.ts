import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { JsonValue } from '@/shared/trail/canonical-json'
import { appendEntry, entryHash, type TrailEntry } from '@/shared/trail/entry'
import { trailRoot } from '@/shared/trail/merkle'
import { sha256 } from '@/shared/trail/sha256'
import type { TrailBreakKind } from '@/shared/trail/trail-break'
import type { TrailSeal } from '@/shared/trail/trail-seal'
import { trailVerifier, verifyTrail } from '@/shared/trail/verify'

function trailOf(payloads: readonly JsonValue[]): TrailEntry[] {
  const entries: TrailEntry[] = []
  for (const [index, payload] of payloads.entries()) {
    const at = `2026-03-04T10:11:12.${String(index % 1000).padStart(3, '0')}Z`
    const draft = {
      trailId: 't-1',
      at,
      actorId: 'p-1',
      actorName: 'Ines Moor',
      command: 'revise-parameter',
      payload,
    }
    entries.push(appendEntry(entries.at(-1), draft, sha256))
  }
  return entries
}

const kinds = (entries: readonly TrailEntry[], seals?: readonly TrailSeal[]): [TrailBreakKind, number][] =>
  verifyTrail(entries, sha256, seals).breaks.map(({ kind, seq }) => [kind, seq])

/** As a forger would: gives the entry a hash that fits its changed content. */
const resealed = (entry: TrailEntry): TrailEntry => ({ ...entry, hash: entryHash(entry, sha256) })

const whole = trailOf([1, 2, 3, 4, 5, 6].map((diameterMm) => ({ diameterMm })))
const at = (seq: number): TrailEntry => whole[seq - 1]!

test('a whole trail has no break, and its newest hash is named', () => {
  const verdict = verifyTrail(whole, sha256)
  expect(verdict).toMatchObject({
    intact: true,
    entryCount: 6,
    newest: { seq: 6, hash: at(6).hash },
    breaks: [],
  })
  expect(verdict.firstBreak).toBeUndefined()
  expect(verdict.sentence).toContain('6 entries')
})

test('a trail without entries proves nothing', () => {
  expect(kinds([])).toEqual([['missing', 1]])
})

describe('each kind of break is found, at its entry', () => {
  test.each<keyof TrailEntry>(['at', 'actorId', 'actorName', 'command', 'payload'])('altered %s', (field) => {
    const value = field === 'at' ? '2026-03-04T10:11:13.000Z' : 'other'
    expect(kinds(whole.with(3, { ...at(4), [field]: value }))).toEqual([['altered', 4]])
  })
  test('altered hash: the entry and the one that points to it', () => {
    expect(kinds(whole.with(3, { ...at(4), hash: sha256('x') }))).toEqual([
      ['altered', 4],
      ['wrong-previous-hash', 5],
    ])
  })
  test('altered and given a fitting hash: the next entry tells', () => {
    expect(kinds(whole.with(3, resealed({ ...at(4), actorName: 'Someone else' })))).toEqual([
      ['wrong-previous-hash', 5],
    ])
  })
  test('moved to another place in the chain', () => {
    expect(kinds(whole.with(3, resealed({ ...at(4), previousHash: at(1).hash })))).toEqual([
      ['wrong-previous-hash', 4],
      ['wrong-previous-hash', 5],
    ])
  })
  test('missing, one and several and the first', () => {
    expect(kinds(whole.toSpliced(3, 1))).toEqual([['missing', 4]])
    expect(kinds(whole.toSpliced(1, 3))).toEqual([['missing', 2]])
    expect(verifyTrail(whole.toSpliced(1, 3), sha256).sentence).toContain('Entries 2 to 4 are missing')
    expect(kinds(whole.slice(2))).toEqual([['missing', 1]])
  })
  test('a swapped pair', () => {
    const swapped = whole.with(2, at(4)).with(3, at(3))
    expect(kinds(swapped)).toEqual([['out-of-order', 3]])
    expect(verifyTrail(swapped, sha256).sentence).toContain('Entry 3 stands behind entry 4')
  })
  test('a swapped pair that was given the other’s numbers and fitting hashes', () => {
    const third = resealed({ ...at(4), seq: 3 })
    const fourth = resealed({ ...at(3), seq: 4 })
    expect(kinds(whole.with(2, third).with(3, fourth))).toEqual([
      ['wrong-previous-hash', 3],
      ['wrong-previous-hash', 4],
      ['wrong-previous-hash', 5],
    ])
  })
  test('a duplicated entry, beside itself or elsewhere', () => {
    expect(kinds(whole.toSpliced(3, 0, at(3)))).toEqual([['duplicated', 3]])
    expect(kinds([...whole, at(2)])).toEqual([['duplicated', 2]])
  })
  test('an entry slipped in under a number in use', () => {
    const slipped = resealed({ ...at(3), payload: '{"forged":true}' })
    expect(kinds(whole.toSpliced(3, 0, slipped))).toEqual([['duplicated', 3]])
  })
  test('a wrong beginning', () => {
    expect(kinds(whole.with(0, resealed({ ...at(1), previousHash: sha256('x') })))).toEqual([
      ['wrong-genesis', 1],
      ['wrong-previous-hash', 2],
    ])
  })
  test('an entry of another trail', () => {
    expect(kinds(whole.with(3, resealed({ ...at(4), trailId: 't-2' })))).toEqual([
      ['foreign', 4],
      ['wrong-previous-hash', 5],
    ])
  })
  test('several breaks at once are all listed, lowest first', () => {
    const broken = whole.with(4, { ...at(5), command: 'other' }).toSpliced(1, 1)
    expect(kinds(broken)).toEqual([
      ['missing', 2],
      ['altered', 5],
    ])
    expect(verifyTrail(broken, sha256).firstBreak).toMatchObject({ kind: 'missing', seq: 2 })
  })
  test.each<[string, unknown]>([
    ['nothing', null],
    ['a number as text', { ...at(4), seq: '4' }],
    ['a number that is none', { ...at(4), seq: Number.NaN }],
    ['entry nought', { ...at(4), seq: 0 }],
    ['no actor', { ...at(4), actorId: undefined }],
    ['a time that does not exist', { ...at(4), at: '2026-02-30T10:11:12.345Z' }],
    ['a payload with half a character pair', { ...at(4), payload: '"\ud800"' }],
  ])('unreadable: %s', (_, entry) => {
    expect(kinds(whole.with(3, entry as TrailEntry))).toContainEqual(['malformed', 4])
  })
})

describe('a seal kept elsewhere', () => {
  const seal: TrailSeal = {
    name: 'the evaluation gate',
    seq: 4,
    headHash: at(4).hash,
    merkleRoot: trailRoot(
      whole.slice(0, 4).map(({ hash }) => hash),
      sha256,
    ),
  }
  test('agrees with the trail, and with a longer one', () => {
    expect(kinds(whole, [seal])).toEqual([])
    expect(kinds(whole.slice(0, 4), [seal])).toEqual([])
  })
  test('shows a cut-off end, which the chain alone cannot', () => {
    expect(kinds(whole.slice(0, 3))).toEqual([])
    expect(kinds(whole.slice(0, 3), [seal])).toEqual([['cut-off', 4]])
  })
  test('shows a chain written anew, which the chain alone cannot', () => {
    const rewritten = trailOf([1, 2, 3.5, 4, 5, 6].map((diameterMm) => ({ diameterMm })))
    expect(kinds(rewritten)).toEqual([])
    expect(kinds(rewritten, [seal])).toEqual([['resealed', 4]])
  })
  test('with a root of other entries', () => {
    expect(kinds(whole, [{ ...seal, merkleRoot: sha256('x') }])).toEqual([['resealed', 4]])
  })
  test('a hash alone is a seal too', () => {
    expect(kinds(whole, [{ name: 'the printed page', seq: 5, headHash: at(4).hash }])).toEqual([
      ['resealed', 5],
    ])
  })
})

test('entries may come in pages', () => {
  const verifier = trailVerifier(sha256)
  for (const entry of whole.slice(0, 2)) verifier.add(entry)
  expect(verifier.finish()).toMatchObject({ intact: true, newest: { seq: 2 } })
  for (const entry of whole.slice(2)) verifier.add(entry)
  expect(verifier.finish()).toMatchObject({ intact: true, newest: { seq: 6 } })
})

const anyTrail = fc
  .array(fc.jsonValue({ maxDepth: 2 }), { minLength: 2, maxLength: 12 })
  .map((payloads) => trailOf(payloads.map((payload) => JSON.parse(JSON.stringify(payload)) as JsonValue)))

test('law: an untouched trail has no break; an altered, missing, swapped or doubled entry is found where it is', () => {
  fc.assert(
    fc.property(anyTrail, fc.nat(), fc.jsonValue({ maxDepth: 1 }), (trail, pick, forged) => {
      expect(kinds(trail)).toEqual([])
      const index = pick % trail.length
      const entry = trail[index]!

      const payload = JSON.stringify(forged)
      fc.pre(payload !== entry.payload)
      expect(kinds(trail.with(index, { ...entry, payload }))).toEqual([['altered', index + 1]])

      // Without a seal a cut-off end cannot show; every other gap does.
      const shorter = kinds(trail.toSpliced(index, 1))
      expect(shorter).toEqual(index === trail.length - 1 ? [] : [['missing', index + 1]])

      const first = pick % (trail.length - 1)
      const swapped = trail.with(first, trail[first + 1]!).with(first + 1, trail[first]!)
      expect(kinds(swapped)).toEqual([['out-of-order', first + 1]])

      expect(kinds(trail.toSpliced(pick % (trail.length + 1), 0, entry))).toContainEqual([
        'duplicated',
        index + 1,
      ])
    }),
  )
})

test('law: any order but the written one is a break', () => {
  fc.assert(
    fc.property(anyTrail, fc.infiniteStream(fc.nat()), (trail, picks) => {
      const shuffled = [...trail]
      for (let last = shuffled.length - 1; last > 0; last--) {
        const other = picks.next().value! % (last + 1)
        ;[shuffled[last], shuffled[other]] = [shuffled[other]!, shuffled[last]!]
      }
      const same = shuffled.every((entry, index) => entry === trail[index])
      expect(verifyTrail(shuffled, sha256).intact).toBe(same)
    }),
  )
})
