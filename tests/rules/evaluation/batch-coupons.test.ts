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
