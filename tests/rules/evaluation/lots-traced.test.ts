import { expect, test } from 'vitest'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import type { Inspection } from '@/shared/records/inspection'
import type { Lot } from '@/shared/records/lot'
import { lotsTraced } from '@/shared/rules/evaluation/lots-traced'
import { findingOf, set, type FactsInput } from '../facts-builder'
import { accepted, boardPlan, lot, needed, rejected } from '../lots-builder'

const findingWith = (lots: readonly Lot[], over: FactsInput = {}) =>
  findingOf(lotsTraced, { values: boardPlan, lots, ...over })
const used = (over: Partial<Lot> = {}) => lot({ disposition: accepted, usedIn: ['A-001', 'A-002'], ...over })
const inspected: Inspection = {
  id: 'n1',
  assembly: 'A-003',
  inspectedOn: '2026-03-01',
  inspector: 'K. Abe',
  magnification: 4,
  jointsSeen: 120,
  defects: [],
  note: '',
}

test('assemblies from accepted lots are traced', () => {
  expect(findingWith([used()]).verdict).toBe('meets')
})
test('before anything is built there is nothing to trace', () => {
  expect(findingWith([lot({ disposition: accepted })]).verdict).toBe('not applicable')
})
test('where nothing says what an assembly is made of, it is traced to nothing', () => {
  expect(findingWith([used()], { values: [] }).verdict).toBe('undetermined')
})
test('an assembly from a rejected lot fails, and is named', () => {
  const finding = findingWith([used({ disposition: rejected })])
  expect(finding.verdict).toBe('fails')
  expect(finding.found).toContain('rejected, and used in A-001, A-002')
})
test('an assembly from a lot nobody disposed of fails', () => {
  expect(findingWith([used({ disposition: null })]).verdict).toBe('fails')
})
test('use under concession stays in sight', () => {
  const finding = findingWith([used({ disposition: { ...accepted, verdict: 'use under concession' } })])
  expect(finding.verdict).toBe('marginal')
})
test('an inspected assembly that no lot went into is open', () => {
  const finding = findingWith([used()], { inspections: [inspected] })
  expect(finding.verdict).toBe('undetermined')
  expect(finding.found).toContain('A-003 is traced to no lot')
})
test('every soldered part is traced, not only the board', () => {
  const rows = [
    needed('bare board LX-41', 'bare board', 'rotary-dip'),
    needed('T1', 'component', 'dip-and-look'),
  ]
  const finding = findingWith([used()], { values: [...boardPlan, set(lotsNeeded, rows)] })
  expect(finding.found).toContain('T1: A-001, A-002 are traced to no lot')
})
test('an accepted lot still in store is noted, not held against anyone', () => {
  const finding = findingWith([used(), lot({ id: 'x', code: 'B-09', disposition: accepted })])
  expect(finding.verdict).toBe('meets')
  expect(finding.notes?.join(' ')).toContain('B-09')
})
test('many assemblies are listed in brief', () => {
  const usedIn = Array.from({ length: 9 }, (_, at) => `A-${at}`)
  expect(findingWith([used({ disposition: rejected, usedIn })]).found).toContain('A-0–A-8')
})
test('a rejected lot in an assembly fails, even where nothing says what assemblies are made of', () => {
  expect(findingWith([used({ disposition: rejected })], { values: [] }).verdict).toBe('fails')
})
test('a lot still in store is held against nobody, whatever became of it', () => {
  const others = [null, rejected].map((disposition, at) =>
    lot({ id: `x${at}`, code: `B-1${at}`, disposition }),
  )
  const finding = findingWith([used(), ...others])
  expect(finding.verdict).toBe('meets')
  expect(finding.notes).toEqual([])
})
test('an inspection that comes later is judged too, on the same lots', () => {
  const lots = [used()]
  expect(findingWith(lots).verdict).toBe('meets')
  expect(findingWith(lots, { inspections: [inspected] }).verdict).toBe('undetermined')
})
test('laminate and coupons are not in an assembly as such, and need no tracing', () => {
  const rows = [
    needed('bare board LX-41', 'bare board', 'rotary-dip'),
    needed('FR-4', 'laminate', 'solder-float'),
    needed('coupon LX-41', 'coupon', 'rotary-dip'),
  ]
  expect(findingWith([used()], { values: [...boardPlan, set(lotsNeeded, rows)] }).verdict).toBe('meets')
})
// Counted by hand: of the lot, A-003 inspected; one of two lots used.
test('what was counted is shown', () => {
  const finding = findingWith([used({ disposition: null }), lot({ id: 'x', code: 'B-09' })], {
    inspections: [inspected],
  })
  expect(finding.measured).toEqual({ assemblies: { value: 3, unit: '1' } })
  expect(finding.working).toMatchObject([{ numbers: '3 assemblies, 1 lots used' }])
  expect(finding.parts?.[0]).toMatchObject({
    about: { lot: 'B-01' },
    measured: { usedIn: ['A-001', 'A-002'], disposition: 'none' },
  })
  const conceded = { ...accepted, verdict: 'use under concession' } as const
  expect(findingWith([used({ disposition: conceded })]).parts?.[0]?.measured).toEqual({
    usedIn: ['A-001', 'A-002'],
    disposition: 'use under concession',
    reason: 'Sample good.',
  })
})
