import { expect, test } from 'vitest'
import { acceptableQualityLevel } from '@/shared/plan/parameters/evaluation-sampling'
import type { Lot } from '@/shared/records/lot'
import { supplierResultsReaffirmed } from '@/shared/rules/evaluation/supplier-results-reaffirmed'
import { findingOf } from '../facts-builder'
import { boardConditions, boardPlan, lot, rejected, rotaryDip, testOf, timer, times } from '../lots-builder'

const findingWith = (lots: readonly Lot[]) =>
  findingOf(supplierResultsReaffirmed, { values: boardPlan, instruments: [timer], lots })

test('a stated result with a test here beside it is reaffirmed', () => {
  expect(findingWith([lot({ tests: [rotaryDip([1])] })]).verdict).toBe('meets')
})
test.each([
  [
    'nothing stated',
    lot({ supplierResult: '  ', tests: [rotaryDip([1])] }),
    'without a result of the supplier',
  ],
  ['nothing tested here', lot(), 'no test of ours'],
  [
    'a test here under other conditions',
    lot({ tests: [rotaryDip([1], { conditions: { ...boardConditions, flux: 'process-flux' } })] }),
    'no test of ours',
  ],
  [
    'a test here without an instrument',
    lot({ tests: [rotaryDip([1], { instrumentId: null })] }),
    'no test of ours',
  ],
])('%s: open', (_, one, message) => {
  const finding = findingWith([one])
  expect(finding.verdict).toBe('undetermined')
  expect(finding.found).toContain(message)
})
test('papers and markings reaffirm a consumable, not a surface', () => {
  const check = testOf('receiving-check', [{ specimen: 'p', checked: 'identity', outcome: 'as ordered' }], {
    instrumentId: null,
  })
  expect(findingWith([lot({ kind: 'consumable', part: 'flux', tests: [check] })]).verdict).toBe('meets')
  expect(findingWith([lot({ tests: [check] })]).verdict).toBe('undetermined')
})
test('a rejected lot needs no reaffirming, and alone leaves nothing to judge', () => {
  expect(
    findingWith([lot({ tests: [rotaryDip([1])] }), lot({ id: 'x', disposition: rejected })]).verdict,
  ).toBe('meets')
  expect(findingWith([lot({ disposition: rejected })]).verdict).toBe('undetermined')
})

test('a sample that rejects the lot contradicts the supplier, until the lot is disposed of', () => {
  const slow = lot({ tests: [rotaryDip(times(13, 3))] })
  const finding = findingWith([slow])
  expect(finding.verdict).toBe('fails')
  expect(finding.found).toContain('not reaffirmed: here it failed by rotary dip')
  expect(
    findingWith([lot({ tests: [rotaryDip([1])] }), lot({ ...slow, id: 'x', disposition: rejected })]).verdict,
  ).toBe('meets')
})
test('without a sampling plan a test still stands beside the supplier’s result', () => {
  const values = boardPlan.filter(([key]) => key !== acceptableQualityLevel.key)
  const facts = { values, instruments: [timer], lots: [lot({ tests: [rotaryDip(times(13, 3))] })] }
  expect(findingOf(supplierResultsReaffirmed, facts).verdict).toBe('meets')
})
