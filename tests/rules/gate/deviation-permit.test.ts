import { describe, expect, test } from 'vitest'
import { concessionFor, concessionStatus } from '@/shared/gate/concession'
import { isWithin, type DepartureBounds } from '@/shared/gate/deviation-permit'
import type { ConcessionEntry, ProgrammeState } from '@/shared/gate/programme-state'
import { limit } from '@/shared/plan/requirement'
import { numberParameter } from '@/shared/plan/parameter'
import type { Facts } from '@/shared/rules/facts'
import { judge, rule } from '@/shared/rules/rule'
import { NO_RECORDS } from '@/shared/records/programme-records'
import { commonPractice } from '@/shared/sources/provenance'
import { signedUpTo } from './small-programme'

/* ISO 9000:2015, 3.12.6: for a limited quantity or period, and for a specific use. How that is worked out is this project's own. */

const gap = numberParameter({
  key: 'test-gap',
  label: 'Gap',
  help: '',
  owner: 'design',
  unit: 'mm',
  min: 0,
  max: 9,
})
const gapMax = limit({
  key: 'test-gap-most',
  label: 'Gap',
  unit: 'mm',
  direction: 'at most',
  byDefault: { value: 1, authority: 'common practice', from: commonPractice('A gap is small') },
})
const gapRule = rule({
  id: 'test-gap-small',
  title: 'Gap',
  why: 'A wide gap does not fill.',
  formula: 'gap ≤ limit',
  stage: 'specification',
  version: 1,
  reads: { gap, gapMax },
  judge: ({ gap: found, gapMax: { value } }) => ({
    verdict: found <= value ? 'meets' : 'fails',
    found: `The gap is ${found} mm.`,
    limit: `at most ${value} mm`,
    working: [],
    sources: [],
    parts: [
      {
        subject: 'hole set A',
        about: { holes: 'A' },
        verdict: found <= value ? 'meets' : 'fails',
        found: `${found} mm`,
      },
    ],
  }),
})

const factsAt = (value: number, runs: readonly object[] = []): Facts => ({
  values: new Map([[gap.key, value]]),
  requirements: [],
  records: { ...NO_RECORDS, byKind: new Map([['soldering-run', runs as { id: string }[]]]) },
  today: '2026-03-02',
})
const within = (bounds: DepartureBounds, value: number): boolean =>
  isWithin(bounds, judge(gapRule, factsAt(value)), gapRule, factsAt(value))

describe('a finding that comes', () => {
  test('lies within a permitted value up to and at it, and no farther', () => {
    const bounds = { kind: 'limit', limit: gapMax.key, value: 1.5 } as const
    expect([1.2, 1.5, 1.6].map((value) => within(bounds, value))).toEqual([true, true, false])
  })

  test('is not let pass by a value that is stricter than the limit, nor by another limit', () => {
    expect(within({ kind: 'limit', limit: gapMax.key, value: 0.9 }, 1.2)).toBe(false)
    expect(within({ kind: 'limit', limit: 'another', value: 9 }, 1.2)).toBe(false)
  })

  test('lies within when each part in the way is named and departs in the permitted way', () => {
    const parts = (way: 'fails' | 'undetermined', ...names: string[]) =>
      within({ kind: 'parts', way, parts: names }, 1.2)
    expect(parts('fails', ' a ')).toBe(true)
    expect(parts('fails', 'Hole set A')).toBe(true)
    expect(parts('fails')).toBe(true)
    expect(parts('fails', 'B')).toBe(false)
    expect(parts('undetermined', 'A')).toBe(false)
  })
})

const AT = '2026-02-10T08:00:00.000Z'
const granted = { byId: 'd', byName: 'D', at: AT, on: '2026-02-10' }
const permit = (over: Partial<ConcessionEntry> = {}): ConcessionEntry => ({
  id: 'c',
  number: 1,
  itemKey: 'finish',
  rule: gapRule.id,
  findingDigest: '',
  findingData: null,
  permit: { kind: 'limit', limit: gapMax.key, value: 1.5 },
  why: 'w',
  quantity: 10,
  untilOn: null,
  requestedById: 'p',
  requestedByName: 'P',
  requestedAt: AT,
  design: granted,
  quality: { ...granted, byId: 'q', at: '2026-02-11T08:00:00.000Z', on: '2026-02-11' },
  refused: null,
  ...over,
})
const soldered = (doneOn: string, assemblies: number) => ({ id: doneOn, doneOn, assemblies })

test('a permit is used up when more boards were soldered from its second signature on', () => {
  const at = (...runs: object[]) => concessionStatus(permit(), undefined, factsAt(1, runs))
  expect(at(soldered('2026-02-10', 99), soldered('2026-02-11', 10))).toBe('granted')
  expect(at(soldered('2026-02-11', 10), soldered('2026-02-12', 1))).toBe('used up')
  // Signed last at 23:00 UTC, midnight in Berlin (IANA time zone database, rule EU: an hour ahead in winter): the day of the works counts.
  const late = permit({
    quality: { ...granted, byId: 'q', at: '2026-02-11T00:00:00.000Z', on: '2026-02-11' },
    design: { ...granted, at: '2026-02-11T23:00:00.000Z', on: '2026-02-12' },
  })
  const lateAt = (...runs: object[]) => concessionStatus(late, undefined, factsAt(1, runs))
  expect(lateAt(soldered('2026-02-11', 99))).toBe('granted')
  expect(lateAt(soldered('2026-02-12', 11))).toBe('used up')
  expect(concessionStatus(permit({ untilOn: '2026-03-01' }), undefined, factsAt(1))).toBe('expired')
  expect(concessionStatus(permit({ quality: null }), undefined, factsAt(1))).toBe('asked')
})

test('a permit lets a finding of its own item and rule pass', () => {
  const start = signedUpTo('specification')
  const items = start.items.map((item) =>
    item.definition.key === 'finish'
      ? { ...item, definition: { ...item.definition, rules: [gapRule] } }
      : item,
  )
  const state: ProgrammeState = { ...start, items, facts: factsAt(1.2), concessions: [permit()] }
  const finding = judge(gapRule, state.facts)
  expect(concessionFor(finding, 'finish', state)?.number).toBe(1)
  expect(concessionFor(finding, 'conductors', state)).toBeUndefined()
  expect(
    concessionFor(judge(gapRule, factsAt(1.7)), 'finish', { ...state, facts: factsAt(1.7) }),
  ).toBeUndefined()
})
