import { describe, expect, test } from 'vitest'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import {
  wettingBalanceAgreedBy,
  wettingBalanceCriteria,
} from '@/shared/plan/parameters/evaluation-wetting-balance'
import type { Lot, LotTest } from '@/shared/records/lot'
import { batchCoupons } from '@/shared/rules/evaluation/batch-coupons'
import { lotsDispositioned } from '@/shared/rules/evaluation/lots-dispositioned'
import { resultStillFresh } from '@/shared/rules/evaluation/result-still-fresh'
import { supplierResultsReaffirmed } from '@/shared/rules/evaluation/supplier-results-reaffirmed'
import { wettingBalanceCurves } from '@/shared/rules/evaluation/wetting-balance-curves'
import { findingOf, set, type SetValue } from '../facts-builder'
import { accepted, boardConditions, boardPlan, lot, needed, stated, testOf, timer } from '../lots-builder'

const conditions = {
  ...boardConditions,
  perimeterMm: Math.PI * 0.8,
  sectionMm2: (Math.PI / 4) * 0.64,
  depthMm: 4,
  immersionSpeedMmPerS: 40,
  surfaceTensionNPerM: 0.4,
  densityGPerMl: 8,
  forceSign: 'down-positive',
}
/** A curve that crosses zero at a time, reaches `peak` at 1.9 s, holds to 5 s and ends at `end`. */
const curve = (crossS: number, peak: number, end = peak, over: Partial<LotTest> = {}): LotTest => {
  const points = [
    [0, 0],
    [0.1, -0.2],
    [crossS - 0.05, -0.2],
    [crossS, 0],
    [1.9, peak],
    [5, peak],
    [8, end],
  ] as const
  const rows = points.map(([timeS, forceMN]) => ({ specimen: 'w1', timeS, forceMN }))
  return testOf('wetting-balance', rows, { conditions, ...over })
}
const wire = (...tests: LotTest[]): Lot => lot({ kind: 'component', part: 'T1', tests })
const base = [...boardPlan, set(testConditions, [stated('wetting-balance')])]
const agreed = (set_: 'set-a' | 'set-b'): SetValue[] => [
  set(wettingBalanceCriteria, set_),
  set(wettingBalanceAgreedBy, 'R. Osei and Northgate Circuits, QA-12'),
]
const findingWith = (lots: readonly Lot[], values: readonly SetValue[] = []) =>
  findingOf(wettingBalanceCurves, { values: [...base, ...values], instruments: [timer], lots })

// IEC 60068-2-69:2017 (published, abstract): not intended as absolute pass or fail.
describe('without an agreement', () => {
  test('a dreadful curve is evidence, not a verdict', () => {
    const finding = findingWith([wire(curve(1.8, -0.1))])
    expect(finding.verdict).toBe('meets')
    expect(finding.found).toContain('recorded as evidence')
    expect(finding.limit).toContain('not a verdict')
  })
  test('shows the slowest crossing and the largest angle', () => {
    const finding = findingWith([wire(curve(0.5, 0.7), curve(1.5, 0.5, 0.5, { id: 'second' }))])
    // 0.50 mN on this wire stands at 49.14° (computed from the force balance).
    expect(finding.found).toContain('largest angle at 2 s 49.1°')
    expect(finding.found).toContain('slowest passes 90°')
    expect(finding.working.find(({ label }) => label === 'Buoyancy line')?.result).toBe('−0.158 mN')
  })
  // J-STD-002, suggested criteria: the first force asked is that at 2 s (from memory).
  test('a curve that ends before the specimen has had time to wet tells nothing, good or bad', () => {
    const cutAt = (timeS: number, forceMN: number) => {
      const rows = [
        { specimen: 'w1', timeS: 0, forceMN: 0 },
        { specimen: 'w1', timeS, forceMN },
      ]
      return findingWith([wire(testOf('wetting-balance', rows, { conditions }))])
    }
    expect(cutAt(1.9, 0.3).verdict).toBe('undetermined')
    expect(cutAt(1.9, -0.3).verdict).toBe('undetermined')
    expect(cutAt(2, 0.3).verdict).toBe('meets')
    expect(cutAt(2, -0.3).verdict).toBe('fails')
  })
  test('no curve asked for and none recorded', () => {
    expect(findingWith([wire()]).verdict).toBe('not applicable')
  })
  test('a curve that is planned must be there', () => {
    const values = [set(lotsNeeded, [needed('T1', 'component', 'wetting-balance')])]
    expect(findingWith([wire()], values).verdict).toBe('undetermined')
  })
})

describe('where the parties agreed', () => {
  test('an agreement without a name is none', () => {
    const finding = findingWith([wire(curve(0.5, 0.7))], [set(wettingBalanceCriteria, 'set-a')])
    expect(finding.verdict).toBe('undetermined')
    expect(finding.missing).toEqual(['Criteria agreed by'])
  })
  // J-STD-002 sets A and B (from memory). Theoretical force of the wire 0.8476 mN, half 0.4238 mN.
  test.each([
    ['set-a', 0.5, 0.7, 0.7, 'meets'],
    ['set-a', 0.95, 0.7, 0.7, 'marginal'],
    ['set-a', 1.2, 0.7, 0.7, 'fails'],
    ['set-b', 1.2, 0.7, 0.7, 'meets'],
    ['set-a', 0.5, 0.42, 0.42, 'fails'],
    ['set-a', 0.5, 0.43, 0.43, 'marginal'],
    ['set-b', 0.5, 0.1, 0.1, 'meets'],
    ['set-b', 0.5, -0.1, -0.1, 'fails'],
    // A fall from 0.70 to 0.50 is 0.20 of 0.858 above the buoyancy line: 23 %; to 0.54, 19 %.
    ['set-a', 0.5, 0.7, 0.5, 'fails'],
    ['set-a', 0.5, 0.7, 0.54, 'marginal'],
    ['set-a', 0.5, 0.7, 0.55, 'meets'],
  ] as const)('%s: crosses at %s s, peak %s mN, end %s mN: %s', (criteria, cross, peak, end, verdict) => {
    expect(findingWith([wire(curve(cross, peak, end))], agreed(criteria)).verdict).toBe(verdict)
  })
  test('a curve that ends before 5 s cannot be judged', () => {
    const short = testOf(
      'wetting-balance',
      [
        { specimen: 'w1', timeS: 0, forceMN: -0.2 },
        { specimen: 'w1', timeS: 0.5, forceMN: 0.1 },
        { specimen: 'w1', timeS: 3, forceMN: 0.7 },
      ],
      { conditions },
    )
    const finding = findingWith([wire(short)], agreed('set-a'))
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toContain('force at 5 s: not recorded')
  })
  test('the worst of several curves speaks', () => {
    const finding = findingWith(
      [wire(curve(0.5, 0.7), curve(1.2, 0.7, 0.7, { id: 'slow' }))],
      agreed('set-a'),
    )
    expect(finding.found).toContain('2 curves, 1 outside')
  })
  test('no curve is no pass', () => {
    const values = [...agreed('set-a'), set(lotsNeeded, [needed('T1', 'component', 'wetting-balance')])]
    expect(findingWith([wire()], values).verdict).toBe('undetermined')
  })
})

// Force balance F = γ·P·cos θ − ρ·g·V: below −0.158 mN on this wire the angle is over 90°.
describe('a lead that ends unwetted fails', () => {
  const shunned = wire(curve(3, -0.3))
  test.each([[[]], [agreed('set-a')], [agreed('set-b')], [[set(wettingBalanceCriteria, 'set-a')]]])(
    'whatever was agreed',
    (values) => {
      const finding = findingWith([shunned], values)
      expect(finding.verdict).toBe('fails')
      expect(finding.found).toContain('over 90°')
    },
  )
  test('also where it wetted first and drew back', () => {
    expect(findingWith([wire(curve(0.5, 0.7, -0.2))]).verdict).toBe('fails')
    expect(findingWith([wire(curve(0.5, 0.7, -0.15))]).verdict).toBe('meets')
  })
  test('and so do the rules on lots that rest on it', () => {
    const facts = { values: base, instruments: [timer] }
    const kept = { ...shunned, disposition: accepted }
    expect(findingOf(lotsDispositioned, { ...facts, lots: [kept] }).verdict).toBe('fails')
    expect(findingOf(supplierResultsReaffirmed, { ...facts, lots: [kept] }).verdict).toBe('fails')
    expect(findingOf(resultStillFresh, { ...facts, lots: [kept] }).verdict).toBe('fails')
    const board = lot({ tests: [curve(3, -0.3)] })
    expect(findingOf(batchCoupons, { ...facts, lots: [board] }).verdict).toBe('fails')
    const coupon = lot({ id: 'C', code: 'C', kind: 'coupon', part: 'coupon', tests: [curve(3, -0.3)] })
    expect(findingOf(batchCoupons, { ...facts, lots: [lot(), coupon] }).verdict).toBe('fails')
  })
})

describe('curves that do not count', () => {
  test('under other conditions', () => {
    const other = curve(0.5, 0.7, 0.7, { conditions: { ...conditions, bathTemperatureC: 260 } })
    expect(findingWith([wire(other)]).found).toContain('no curve counts')
  })
  test('cut off before they tell of wetting: no clock starts by them', () => {
    const rows = [
      { specimen: 'w1', timeS: 0, forceMN: 0 },
      { specimen: 'w1', timeS: 1.5, forceMN: 0.3 },
    ]
    const kept = { ...wire(testOf('wetting-balance', rows, { conditions })), disposition: accepted }
    const facts = { values: base, instruments: [timer], lots: [kept] }
    expect(findingOf(resultStillFresh, facts).verdict).toBe('undetermined')
    expect(findingOf(lotsDispositioned, facts).verdict).toBe('undetermined')
  })
  test('without the dimensions that give them meaning', () => {
    const blind = curve(0.5, 0.7, 0.7, { conditions: { ...conditions, perimeterMm: undefined } })
    const finding = findingWith([wire(blind)])
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toContain('lack wettable perimeter')
    const facts = { values: base, instruments: [timer], lots: [wire(blind)] }
    expect(findingOf(resultStillFresh, facts).verdict).toBe('undetermined')
  })
})
