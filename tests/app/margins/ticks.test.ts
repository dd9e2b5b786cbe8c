import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { stepTo } from '@/app/programmes/[code]/margins/step-to'
import { LIMIT_PLACE, placeOf } from '@/app/programmes/[code]/margins/tick'
import { ticksOf } from '@/app/programmes/[code]/margins/ticks-of'
import { sliderEnds } from '@/app/programmes/[code]/margins/slider-ends'
import type { Finding, Margin } from '@/shared/rules/finding'
import { STANDARD_PLAN } from '@/shared/catalogue/standard-plan'
import type { ItemState } from '@/shared/gate/item-status'

/* Against arithmetic done beside it: a share of the limit left of or right of the limit’s line. */
const margin = (found: number, limit: number, direction: Margin['direction']): Margin => ({
  found,
  limit,
  direction,
  unit: 'mm',
  guardBand: 0,
})
const number = fc.double({ min: 0.01, max: 100, noNaN: true })

describe('a tick', () => {
  test('half the limit inside lies half-way from the limit to the right edge', () => {
    expect(placeOf(margin(5, 10, 'at most'))).toBeCloseTo(LIMIT_PLACE + (1 - LIMIT_PLACE) / 2, 12)
    expect(placeOf(margin(15, 10, 'at least'))).toBeCloseTo(LIMIT_PLACE + (1 - LIMIT_PLACE) / 2, 12)
  })
  test('lies left of the limit exactly when it is beyond, whichever way the limit faces', () =>
    fc.assert(
      fc.property(number, number, fc.constantFrom('at most', 'at least'), (found, limit, direction) => {
        fc.pre(Math.abs(found - limit) > 1e-6 * limit)
        const isBeyond = direction === 'at most' ? found > limit : found < limit
        expect(placeOf(margin(found, limit, direction)) < LIMIT_PLACE).toBe(isBeyond)
      }),
    ))
  test('further inside never lies further left', () =>
    fc.assert(
      fc.property(number, number, number, (limit, one, more) => {
        expect(placeOf(margin(one + more, limit, 'at least'))).toBeGreaterThanOrEqual(
          placeOf(margin(one, limit, 'at least')),
        )
      }),
    ))
})

test('the map holds each finding that has a number against a limit, what fails most first', () => {
  const [item] = STANDARD_PLAN.filter(({ rules }) => rules.length >= 4)
  const [near, beyond, unknown, none] = item?.rules ?? []
  const finding = (rule: string, of: Margin | undefined): readonly [string, Finding] => [
    rule,
    {
      rule,
      version: 1,
      verdict: 'meets',
      found: '',
      limit: '',
      working: [],
      sources: [],
      ...(of && { margin: of }),
    },
  ]
  const findings = new Map([
    finding(near!.id, margin(9, 10, 'at most')),
    finding(beyond!.id, margin(12, 10, 'at most')),
    finding(unknown!.id, margin(NaN, 10, 'at most')),
    finding(none!.id, undefined),
  ])
  const items = [{ item: { definition: item } }] as unknown as readonly ItemState[]
  expect(ticksOf({ items, findings }).map(({ rule }) => rule)).toEqual([beyond!.id, near!.id])
})

test('arrows go along the ticks and stop at their ends', () => {
  expect(['ArrowRight', 'ArrowDown', 'ArrowLeft', 'ArrowUp'].map((key) => stepTo(key, 1, 3))).toEqual([
    2, 2, 0, 0,
  ])
  expect([stepTo('ArrowRight', 2, 3), stepTo('ArrowLeft', 0, 3)]).toEqual([2, 0])
  expect([stepTo('Home', 2, 3), stepTo('End', 0, 3), stepTo('x', 0, 3)]).toEqual([0, 2, undefined])
})

test('the slider spans a third to three times of a value, within what it may be', () => {
  expect(sliderEnds({ value: 60, min: 0, max: 100 })).toEqual([20, 100])
  expect(sliderEnds({ value: -30, min: -40, max: 250 })).toEqual([-40, -10])
  expect(sliderEnds({ value: 0, min: 0, max: 5 })).toEqual([0, 5])
})
