import { describe, expect, test } from 'vitest'
import {
  byOrderOfUse,
  isExpired,
  leftInStore,
  toUseFirst,
  type LotInStore,
} from '@/shared/storage/order-of-use'
import { lot } from '../lots-builder'

/* First expired, first used, and first in, first out: common practice in stores, no published source. */

const inStore = (code: string, over: Partial<LotInStore> = {}): LotInStore => ({
  ...lot({ code, quantity: 100 }),
  expiresOn: null,
  allocations: [],
  ...over,
})

describe('what is left of a lot', () => {
  test('is what came without what programmes hold; what went back is there again', () => {
    const allocations = [
      { quantity: 60, returned: 0 },
      { quantity: 30, returned: 10 },
    ]
    expect(leftInStore(inStore('A', { allocations }))).toBe(100 - 60 - 30 + 10)
    expect(leftInStore(inStore('A'))).toBe(100)
  })
  test('its last day is still a day on which it may be used', () => {
    expect(isExpired({ expiresOn: '2026-03-01' }, '2026-03-01')).toBe(false)
    expect(isExpired({ expiresOn: '2026-03-01' }, '2026-03-02')).toBe(true)
    expect(isExpired({ expiresOn: null }, '2099-01-01')).toBe(false)
  })
})

describe('the order of use', () => {
  const late = inStore('late', { expiresOn: '2027-01-01', receivedOn: '2026-01-01' })
  const soon = inStore('soon', { expiresOn: '2026-06-01', receivedOn: '2026-03-01' })
  const old = inStore('old', { receivedOn: '2025-01-01' })
  const fresh = inStore('fresh', { receivedOn: '2026-04-01' })
  test('is by the last day, then by receipt; lots without a day come last', () => {
    expect([fresh, old, late, soon].sort(byOrderOfUse).map(({ code }) => code)).toEqual([
      'soon',
      'late',
      'old',
      'fresh',
    ])
  })
  const today = '2026-05-01'
  test('names the lot before this one, and none before the first', () => {
    expect(toUseFirst(fresh, [fresh, old, late, soon], today)?.code).toBe('soon')
    expect(toUseFirst(soon, [fresh, old, late, soon], today)).toBeUndefined()
  })
  test('looks over what is used up, rejected, past its day, or another part', () => {
    const verdict = { verdict: 'reject', by: 'R. Osei', on: '2026-02-10', reason: 'Slow.' } as const
    for (const over of [
      { allocations: [{ quantity: 100, returned: 0 }] },
      { disposition: verdict },
      { expiresOn: '2026-04-30' },
      { part: 'another board' },
    ])
      expect(toUseFirst(fresh, [inStore('other', { ...soon, ...over, id: 'other' })], today)).toBeUndefined()
    const spelt = inStore('spelt', { ...soon, id: 'spelt', part: ' Bare  board lx-41' })
    expect(toUseFirst(fresh, [spelt], today)?.id).toBe('spelt')
  })
})
