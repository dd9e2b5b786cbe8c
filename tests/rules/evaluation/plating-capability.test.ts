import { describe, expect, test } from 'vitest'
import { platingCapabilityLeast } from '@/shared/plan/limits/evaluation-plating'
import { boardFinish, boardFinishLeast } from '@/shared/plan/parameters/finishes'
import type { Lot } from '@/shared/records/lot'
import { platingCapability } from '@/shared/rules/evaluation/plating-capability'
import { findingOf, requirement, set, type FactsInput } from '../facts-builder'
import { boardPlan, lot, testOf, timer } from '../lots-builder'

const values = [...boardPlan, set(boardFinish, 'tin-lead-plated'), set(boardFinishLeast, 5)]
/** So many readings of exact mean and standard deviation. */
const plated = (count: number, mean: number, s: number, over: Partial<Lot> = {}): Lot => {
  const step = s * Math.sqrt((count - 1) / count)
  const rows = Array.from({ length: count }, (_, at) => ({
    specimen: `s${at}`,
    place: 'track',
    thicknessUm: mean + (at % 2 === 0 ? -step : step),
  }))
  return lot({
    tests: [testOf('plating-thickness', rows, { conditions: { deposit: 'tin-lead', technique: 'x-ray' } })],
    ...over,
  })
}
const findingWith = (lots: readonly Lot[], over: FactsInput = {}) =>
  findingOf(platingCapability, { values, instruments: [timer], lots, ...over })

describe('capability against the minimum', () => {
  // (8 − 5) ÷ (3 · 1) = 1. Lower 95 % bound for n = 20 and index 1: 0.7063517 (Bissell; computed with scipy).
  test('twenty readings, index 1: at least 0.706 with 95 % confidence', () => {
    const finding = findingWith([plated(20, 8, 1)])
    expect(finding.margin?.found).toBeCloseTo(1, 9)
    expect(finding.found).toContain('at least 0.706')
    expect(finding.verdict).toBe('meets')
  })
  test('an index that meets while its bound does not is close', () => {
    expect(findingWith([plated(20, 7.4, 1)]).verdict).toBe('marginal')
  })
  test('an index below the limit fails; exactly on it is close', () => {
    expect(findingWith([plated(20, 7, 1)]).verdict).toBe('fails')
    const requirements = [requirement(platingCapabilityLeast, 1)]
    expect(findingWith([plated(20, 8.0001, 1)], { requirements }).verdict).toBe('marginal')
    expect(findingWith([plated(20, 7.999, 1)], { requirements }).verdict).toBe('fails')
  })
  test('few readings, or readings without spread, make no index', () => {
    expect(findingWith([plated(8, 8, 1)]).found).toContain('8 readings are too few')
    expect(findingWith([plated(20, 8, 0)]).found).toContain('too coarse')
  })
  test('lots of one supplier are taken together, of two are not', () => {
    const two = [plated(10, 8, 0.5), plated(10, 6, 0.5, { id: 'B-02', code: 'B-02' })]
    expect(findingWith(two).parts?.length).toBe(1)
    expect(findingWith(two).found).toContain('20 readings of 2 lots')
    const apart = [two[0]!, { ...two[1]!, supplier: 'Southgate' }]
    expect(findingWith(apart).parts?.length).toBe(2)
  })
  test('nothing measured, nothing judged', () => {
    expect(findingWith([lot()]).verdict).toBe('meets')
  })
})
