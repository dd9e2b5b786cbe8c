import { expect, test } from 'vitest'
import type { Lot } from '@/shared/records/lot'
import { batchCoupons } from '@/shared/rules/evaluation/batch-coupons'
import { findingOf } from '../facts-builder'
import { boardPlan, lot, rejected, rotaryDip, testOf, timer } from '../lots-builder'

const findingWith = (...lots: Lot[]) =>
  findingOf(batchCoupons, { values: boardPlan, instruments: [timer], lots })
const coupon = (over: Partial<Lot> = {}) =>
  lot({ id: 'C-01', code: 'C-01', kind: 'coupon', part: 'coupon LX-41', tests: [rotaryDip([1])], ...over })

test('a tested coupon of the same supplier and date code covers the batch', () => {
  const finding = findingWith(lot(), coupon())
  expect(finding.verdict).toBe('meets')
  expect(finding.parts?.[0]?.found).toContain('coupon lot C-01')
})
test('a board of the lot itself covers it as well', () => {
  expect(findingWith(lot({ tests: [rotaryDip([1])] })).verdict).toBe('meets')
})
test.each([
  ['of another date code', coupon({ dateCode: '2603' })],
  ['of another supplier', coupon({ supplier: 'Southgate' })],
  ['that was rejected', coupon({ disposition: rejected })],
  ['that is not tested', coupon({ tests: [] })],
  ['tested without an instrument', coupon({ tests: [rotaryDip([1], { instrumentId: null })] })],
  ['tested for thickness only', coupon({ tests: [testOf('plating-thickness', [])] })],
])('a coupon %s does not', (_, other) => {
  expect(findingWith(lot(), other).verdict).toBe('undetermined')
})
test('without a date code nobody knows of which batch a coupon is', () => {
  const [dateCode, codeless] = ['not stated', '']
  expect(findingWith(lot({ dateCode }), coupon({ dateCode })).verdict).toBe('undetermined')
  expect(findingWith(lot({ dateCode: codeless }), coupon({ dateCode: codeless })).verdict).toBe(
    'undetermined',
  )
})
test('each batch needs its own', () => {
  const second = lot({ id: 'B-02', code: 'B-02', dateCode: '2605' })
  const finding = findingWith(lot(), second, coupon())
  expect(finding.verdict).toBe('undetermined')
  expect(finding.found).toContain('date code 2605')
})
test('a rejected batch needs none; no batch, nothing to judge', () => {
  const second = lot({ id: 'B-02', code: 'B-02', dateCode: '2605', disposition: rejected })
  expect(findingWith(lot(), second, coupon()).verdict).toBe('meets')
  expect(findingWith(coupon()).verdict).toBe('undetermined')
})
// Rotary dip of boards: wetted within 2 s (common practice, no published source); 2.6 s are too slow, 1 s is not.
test.each([
  ['coupon', lot(), coupon({ tests: [rotaryDip([2.6])] }), 'coupon lot C-01 of its batch', 'C-01'],
  ['board', lot({ tests: [rotaryDip([2.6])] }), coupon(), 'the lot itself', 'B-01'],
  [
    'coupon beside a board that passed',
    lot({ tests: [rotaryDip([1])] }),
    coupon({ tests: [rotaryDip([2.6])] }),
    'coupon lot C-01 of its batch',
    'C-01',
  ],
])('a %s that failed its newest test fails the batch', (_, board, other, what, failed) => {
  const finding = findingWith(board, other)
  expect(finding.verdict).toBe('fails')
  expect(finding.found).toContain(`${what} failed its newest solderability test, of 2026-02-09`)
  expect(finding.parts).toMatchObject([
    { about: { lot: 'B-01' }, measured: { failed, testedOn: '2026-02-09' } },
  ])
  expect(finding.remedy?.message).toContain('Reject the batch')
})
test('a coupon not yet tested is the one to test; without one, coupons are asked for', () => {
  expect(findingWith(lot(), coupon({ tests: [] })).remedy?.message).toBe('Test coupon lot C-01.')
  expect(findingWith(lot()).remedy?.message).toContain('Ask for coupons')
})
test('the batches that are good are counted among all', () => {
  const second = lot({ id: 'B-02', code: 'B-02', dateCode: '2605' })
  const finding = findingWith(lot(), second, coupon())
  expect(finding.working).toMatchObject([{ numbers: '1 of 2 batches' }])
  expect(finding.measured).toEqual({ lots: { value: 2, unit: '1' } })
  expect(finding.parts?.[0]?.measured).toEqual({ tested: 'C-01', dateCode: '2604' })
  expect(findingWith(lot({ tests: [rotaryDip([1])] })).parts?.[0]?.found).toContain(
    'a board of the lot itself',
  )
})
