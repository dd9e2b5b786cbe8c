import { describe, expect, test } from 'vitest'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import { acceptableQualityLevel } from '@/shared/plan/parameters/evaluation-sampling'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import { batchCoupons } from '@/shared/rules/evaluation/batch-coupons'
import { lotsDispositioned } from '@/shared/rules/evaluation/lots-dispositioned'
import { lotsNeededPresent } from '@/shared/rules/evaluation/lots-needed-present'
import { resultStillFresh } from '@/shared/rules/evaluation/result-still-fresh'
import { rotaryDipWettingTime } from '@/shared/rules/evaluation/rotary-dip-wetting-time'
import { supplierResultsReaffirmed } from '@/shared/rules/evaluation/supplier-results-reaffirmed'
import { testConditionsAlike } from '@/shared/rules/evaluation/test-conditions-alike'
import type { AnyRule } from '@/shared/rules/rule'
import type { LotTest } from '@/shared/records/lot'
import { findingOf, set, type SetValue } from '../facts-builder'
import {
  accepted,
  boardConditions,
  boardPlan,
  dippedOn,
  lastingTimer,
  lot,
  needed,
  rotaryDip,
  stated,
  times,
} from '../lots-builder'

/** A relay board's bare boards, to be tried as received and after steam. */
const twice: readonly SetValue[] = [
  ...boardPlan,
  set(testConditions, [stated('rotary-dip'), stated('rotary-dip', { ageing: 'steam-8h' })]),
]
const asReceived = rotaryDip(times(13, 1.2), { id: 'fresh', instrumentId: lastingTimer.id })
const steamed = (seconds = 1.4): LotTest =>
  rotaryDip(times(13, seconds), {
    id: 'steam',
    instrumentId: lastingTimer.id,
    conditions: { ...boardConditions, ageing: 'steam-8h' },
  })

const finding = (rule: AnyRule, tests: readonly LotTest[], values = twice) =>
  findingOf(rule, {
    values,
    instruments: [lastingTimer],
    lots: [lot({ tests, disposition: { ...accepted, on: '2026-02-08' } })],
    today: '2026-03-01',
  })

describe('a lot that is to be tried as received and after steam', () => {
  test('tested as received alone does not meet: the steam is a demand of its own', () => {
    const found = finding(rotaryDipWettingTime, [asReceived])
    expect(found.verdict).toBe('undetermined')
    expect(found.parts?.map(({ subject, verdict }) => [subject, verdict])).toEqual([
      ['lot B-01 (bare board LX-41), as received', 'meets'],
      ['lot B-01 (bare board LX-41), after steam, 8 h', 'undetermined'],
    ])
    expect(found.parts?.map(({ about }) => about?.['ageing'])).toEqual(['none', 'steam-8h'])
  })
  test('meets once both are shown, each by its own sample', () => {
    const found = finding(rotaryDipWettingTime, [asReceived, steamed()])
    expect(found.verdict).toBe('meets')
    expect(found.parts?.map(({ measured }) => measured?.['tested'])).toEqual([
      { value: 13, unit: 'pieces' },
      { value: 13, unit: 'pieces' },
    ])
  })
  test('fails by the one that fails', () => {
    const found = finding(rotaryDipWettingTime, [asReceived, steamed(3)])
    expect(found.parts?.map(({ verdict }) => verdict)).toEqual(['meets', 'fails'])
    const disposed = finding(lotsDispositioned, [asReceived, steamed(3)])
    expect(disposed.verdict).toBe('fails')
    expect(disposed.found).toContain('after steam, 8 h')
  })
  test.each([
    lotsNeededPresent,
    testConditionsAlike,
    supplierResultsReaffirmed,
    batchCoupons,
    resultStillFresh,
    lotsDispositioned,
  ])('$id says what is missing', (rule) => {
    expect(finding(rule, [asReceived, steamed()]).verdict).toBe('meets')
    expect(finding(rule, [asReceived]).verdict).toBe('undetermined')
  })
  test('is as fresh as the oldest of its newest results', () => {
    const old = dippedOn('2025-09-01')
    const found = findingOf(resultStillFresh, {
      values: twice,
      instruments: [lastingTimer],
      lots: [lot({ receivedOn: '2025-08-01', tests: [old, steamed()] })],
      today: '2026-03-01',
    })
    expect(found.margin?.found).toBe(181)
  })
})

describe('conditions stated for some lots only', () => {
  test('a row that names a part takes the place of those for its kind, and they of those for any', () => {
    const values = [
      ...boardPlan,
      set(testConditions, [
        stated('rotary-dip', { bathTemperatureC: 255 }),
        stated('rotary-dip', { bathTemperatureC: 245, kind: 'bare board' }),
        stated('rotary-dip', { part: 'Bare board lx-41' }),
      ]),
    ]
    expect(finding(rotaryDipWettingTime, [asReceived], values).verdict).toBe('meets')
    expect(finding(rotaryDipWettingTime, [asReceived], values).parts).toHaveLength(1)
  })
})

describe('a sample, level and quality level of the part’s own', () => {
  const stating = (over: object) => [
    ...boardPlan,
    set(lotsNeeded, [{ ...needed('bare board LX-41', 'bare board', 'rotary-dip'), ...over }]),
  ]
  test('a sample of five of which none may be nonconforming', () => {
    const five = rotaryDip(times(5, 1.2), { instrumentId: lastingTimer.id })
    expect(finding(rotaryDipWettingTime, [five]).verdict).toBe('undetermined')
    expect(finding(rotaryDipWettingTime, [five], stating({ sampleSize: 5 })).verdict).toBe('meets')
    const four = rotaryDip(times(4, 1.2), { instrumentId: lastingTimer.id })
    expect(finding(rotaryDipWettingTime, [four], stating({ sampleSize: 5 })).verdict).toBe('undetermined')
    const slow = rotaryDip([...times(4, 1.2), 4], { instrumentId: lastingTimer.id })
    expect(finding(rotaryDipWettingTime, [slow], stating({ sampleSize: 5 })).verdict).toBe('fails')
  })
  // MIL-STD-105E tables I and II-A: 200 pieces at level II are letter G; at AQL 1.0 that is 50 on 1 by the arrow to
  // letter H, at AQL 0.25 still 50 on 0.
  test('a level of the part’s own asks a larger sample; what is left empty is the programme’s', () => {
    const found = finding(rotaryDipWettingTime, [asReceived], stating({ level: 'II' }))
    expect(found.found).toContain('37 more')
    const stricter = finding(
      rotaryDipWettingTime,
      [asReceived],
      [...stating({ aql: '0.25' }), set(acceptableQualityLevel, '10')],
    )
    expect(stricter.found).toContain('37 more')
  })
})
