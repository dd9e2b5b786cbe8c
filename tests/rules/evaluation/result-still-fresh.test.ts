import { expect, test } from 'vitest'
import { reaffirmationAgeMax } from '@/shared/plan/limits/evaluation-storage'
import type { Lot } from '@/shared/records/lot'
import { resultStillFresh } from '@/shared/rules/evaluation/result-still-fresh'
import { findingOf, requirement, type FactsInput } from '../facts-builder'
import { accepted, boardConditions, boardPlan, lot, rejected, rotaryDip, timer } from '../lots-builder'

const findingWith = (today: string, one: Partial<Lot> = {}, over: FactsInput = {}) =>
  findingOf(resultStillFresh, {
    values: boardPlan,
    instruments: [timer],
    lots: [lot({ tests: [rotaryDip([1], { testedOn: '2026-02-09' })], disposition: accepted, ...one })],
    today,
    ...over,
  })

// MIL-STD-2000 5.4.4, option 1 (as paraphrased): soldered within 120 days after a pass. The test is
// of 9 February 2026; 120 days later is 9 June.
test.each([
  ['2026-02-09', 'meets'],
  ['2026-05-10', 'meets'],
  ['2026-05-11', 'marginal'],
  ['2026-06-09', 'marginal'],
  ['2026-06-10', 'fails'],
] as const)('on %s: %s', (today, verdict) => {
  expect(findingWith(today).verdict).toBe(verdict)
})
test('says how long it has been here, and how old the result is', () => {
  expect(findingWith('2026-06-10').found).toContain('received 128 days ago, newest result 121 days old')
})
test('a new test makes it fresh again', () => {
  const tests = [
    rotaryDip([1], { testedOn: '2026-02-09' }),
    rotaryDip([1], { testedOn: '2026-06-01', id: 'new' }),
  ]
  expect(findingWith('2026-06-10', { tests }).verdict).toBe('meets')
})
test('a new test under other conditions does not', () => {
  const other = rotaryDip([1], {
    testedOn: '2026-06-01',
    conditions: { ...boardConditions, flux: 'process-flux' },
  })
  const tests = [rotaryDip([1], { testedOn: '2026-02-09' }), other]
  expect(findingWith('2026-06-10', { tests }).verdict).toBe('fails')
})
test('a lot in assemblies, a rejected lot and a spent coupon do not wait', () => {
  expect(findingWith('2027-01-01', { usedIn: ['A-001'] }).verdict).toBe('not applicable')
  expect(findingWith('2027-01-01', { disposition: rejected }).verdict).toBe('not applicable')
  expect(findingWith('2027-01-01', { kind: 'coupon' }).verdict).toBe('not applicable')
})
test('a lot that waits untested is open', () => {
  expect(findingWith('2026-03-01', { tests: [] }).verdict).toBe('undetermined')
})
test('a failed test makes nothing fresh', () => {
  const tests = [
    rotaryDip([1], { testedOn: '2026-02-09' }),
    rotaryDip([9], { testedOn: '2026-06-01', id: 'new' }),
  ]
  expect(findingWith('2026-06-10', { tests }).verdict).toBe('fails')
})
test('a contract may allow two years', () => {
  const requirements = [requirement(reaffirmationAgeMax, 730, { relaxes: true })]
  const finding = findingWith('2026-12-01', {}, { requirements })
  expect(finding.verdict).toBe('meets')
  expect(finding.limit).toContain('looser than the default')
})
