import { createHash } from 'node:crypto'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { JsonValue } from '@/shared/trail/canonical-json'
import { appendEntry, type TrailEntry } from '@/shared/trail/entry'
import type { Sha256 } from '@/shared/trail/sha256'
import { storedBreakInWords } from '@/shared/stored/break-in-words'
import { keptText } from '@/shared/stored/kept-text'
import { StoredComparison } from '@/shared/stored/stored-comparison'
import { verifyTrail } from '@/shared/trail/verify'

const sha256: Sha256 = (bytes) => createHash('sha256').update(bytes).digest('hex')
const AT = '2026-03-04T10:11:12.345Z'
const entry = (command: string, payload: JsonValue, seq = 1, at = AT): TrailEntry => ({
  ...appendEntry(
    undefined,
    { trailId: 'p-1', at, actorId: 'a-1', actorName: 'Ines Moor', command, payload },
    sha256,
  ),
  seq,
})

/** A lot as an entry receives it, and as the database then has it. */
const RECEIVED = {
  id: 'l-1',
  code: 'LOT-1',
  kind: 'bare board',
  part: 'main board',
  supplier: 'A supplier',
  dateCode: '2601',
  quantity: 40,
  receivedOn: '2026-03-01',
  storage: { packing: 'sealed', temperatureC: 20 },
  supplierResult: '',
}
const STORED = {
  ...RECEIVED,
  storage: { temperatureC: 20, packing: 'sealed' },
  disposition: null,
  usedIn: [],
  addedById: 'a-1',
  at: new Date(AT),
}

function findings(entries: readonly TrailEntry[], lots: readonly Readonly<Record<string, unknown>>[]) {
  const comparison = new StoredComparison(sha256, 'programme')
  for (const each of entries) comparison.takeEntry(each)
  comparison.takeRows('Lot', lots)
  comparison.endTable('Lot')
  return comparison.finish()
}
const said = (entries: readonly TrailEntry[], lots: readonly Readonly<Record<string, unknown>>[]) =>
  findings(entries, lots).breaks.map(storedBreakInWords)

describe('a row against the entries that wrote it', () => {
  const received = entry('receive-lot', RECEIVED)
  const traced = entry('trace-lot', { lot: 'LOT-1', part: 'main board', assemblies: ['SN-1', 'SN-2'] }, 2)

  test('the same, whatever the order of its members', () => {
    expect(findings([received], [STORED])).toEqual({
      rows: 1,
      unhashedRows: 0,
      files: 0,
      breaks: [],
      breakCount: 0,
    })
  })
  test('later entries build upon earlier ones', () => {
    expect(said([received, traced], [{ ...STORED, usedIn: ['SN-1', 'SN-2'] }])).toEqual([])
    expect(said([received, traced], [{ ...STORED, usedIn: ['SN-1'] }])).toEqual([
      'The lot (code “LOT-1”) was changed after entry 2: used in is not what was recorded.',
    ])
  })
  test('changed, missing, and made by nobody', () => {
    expect(said([received], [{ ...STORED, quantity: 41, at: new Date('2026-03-05T10:11:12.345Z') }])).toEqual(
      [
        'The lot (code “LOT-1”) was changed after entry 1: quantity was recorded as “40” and is stored as “41”; ' +
          'at was recorded as 2026-03-04 10:11:12.345 UTC and is stored as 2026-03-05 10:11:12.345 UTC.',
      ],
    )
    expect(said([received], [])).toEqual([
      'The lot (code “LOT-1”), written by entry 1, is not there any more.',
    ])
    expect(said([], [STORED])).toEqual(['The lot (code “LOT-1”) is stored, but no entry made it.'])
  })
  test('a column that an entry does not say is not compared, and the row counted', () => {
    const { storage: _, ...older } = RECEIVED
    expect(findings([entry('receive-lot', older)], [STORED])).toMatchObject({
      breakCount: 0,
      unhashedRows: 1,
    })
  })
  test('a value that no record can hold is another value', () => {
    for (const value of [Number.NaN, Infinity, -0, undefined, new Date(Number.NaN), 'half \ud800'])
      expect(said([received], [{ ...STORED, quantity: value }]), String(value)).toHaveLength(1)
  })
})

test('what an older entry changed without saying to what is not compared', () => {
  const person = {
    id: 'a-1',
    email: 'ines@test.invalid',
    name: 'Ines Moor',
    identity: null,
    auditor: false,
    administrator: false,
    disabledAt: null,
    credentialEpoch: 2,
    mustChangePassword: true,
    worksDepartment: null,
    createdAt: AT,
  }
  const entries = [
    entry('add-person', {
      person: 'Ines Moor',
      personId: 'a-1',
      email: 'ines@test.invalid',
      rights: 'member',
    }),
    entry('change-own-password', { person: 'Ines Moor' }, 2),
    entry('reset-password', { person: 'Ines Moor', personId: 'a-1' }, 3),
  ]
  const foundWith = (until: string | null, more: readonly TrailEntry[] = []) => {
    const comparison = new StoredComparison(sha256, 'installation')
    for (const each of [...entries, ...more]) comparison.takeEntry(each)
    comparison.takeRows('Person', [{ ...person, oneTimePasswordUntil: until }])
    return comparison.finish()
  }
  expect(foundWith('2026-03-09T00:00:00.000Z')).toMatchObject({ breakCount: 0, unhashedRows: 1 })
  const newer = entry(
    'reset-password',
    { person: 'Ines Moor', personId: 'a-1', oneTimePasswordUntil: '2026-03-08T00:00:00.000Z' },
    4,
  )
  expect(foundWith('2026-03-09T00:00:00.000Z', [newer]).breaks.map(storedBreakInWords)).toEqual([
    expect.stringContaining('one time password until was recorded as 2026-03-08'),
  ])
})

test('an entry that does not say what it wrote is told, and the walk goes on', () => {
  const odd = [
    entry('receive-lot', 7),
    entry('receive-lot', { code: 'LOT-2' }, 2),
    entry('trace-lot', { lot: 'LOT-9', assemblies: ['SN-1'] }, 3),
    entry('grow-a-lot', {}, 4),
    { ...entry('receive-lot', {}, 5), payload: 'not json' },
    entry('receive-lot', RECEIVED, 6),
  ]
  const { breaks } = findings(odd, [STORED])
  expect(breaks.map((found) => [found.kind, 'seq' in found && found.seq])).toEqual(
    [1, 2, 3, 4, 5].map((seq) => ['unreadable-entry', seq]),
  )
})

test('law: no payload whatever stops the walk', () => {
  const commands = [
    'open-programme',
    'trace-lot',
    'add-record',
    'decide-set-aside',
    'adopt-option',
    'add-readings',
  ]
  fc.assert(
    fc.property(fc.constantFrom(...commands), fc.json({ maxDepth: 4 }), (command, payload) => {
      const comparison = new StoredComparison(sha256, 'programme')
      comparison.takeEntry({ ...entry(command, {}), payload })
      comparison.finish()
    }),
  )
})

const byName = ([one]: [string, unknown], [other]: [string, unknown]): number => (one < other ? -1 : 1)

test('law: two values have one kept text exactly when their JSON is the same', () => {
  fc.assert(
    fc.property(fc.jsonValue(), fc.jsonValue(), (one, other) => {
      const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value))
      const same = keptText(plain(one), sha256) === keptText(plain(other), sha256)
      const sorted = (value: unknown): unknown =>
        Array.isArray(value)
          ? value.map(sorted)
          : typeof value === 'object' && value !== null
            ? {
                members: Object.entries(value)
                  .sort(byName)
                  .map(([name, member]) => [name, sorted(member)]),
              }
            : value
      expect(same).toBe(JSON.stringify(sorted(plain(one))) === JSON.stringify(sorted(plain(other))))
    }),
  )
})

test('long values are kept by their hash', () => {
  const long = 'x'.repeat(10_000)
  expect(keptText(long, sha256).length).toBeLessThan(100)
  expect(keptText(long, sha256)).not.toBe(keptText(`${long}.`, sha256))
})

test('time that runs backwards is no break', () => {
  const first = entry('receive-lot', RECEIVED)
  const second = appendEntry(
    first,
    { ...first, at: '2026-03-04T10:11:12.344Z', payload: {}, command: 'dispose-lot' },
    sha256,
  )
  const third = appendEntry(second, { ...second, payload: {} }, sha256)
  const verdict = verifyTrail([first, second, third], sha256)
  expect(verdict.intact).toBe(true)
  expect(verdict.clockSteps).toEqual([{ seq: 2, at: '2026-03-04T10:11:12.344Z', before: AT }])
})
