import { describe, expect, test } from 'vitest'
import { platingCapabilityMin } from '@/shared/plan/limits/evaluation-plating'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import { boardFinish, boardFinishMin } from '@/shared/plan/parameters/finishes'
import type { Lot } from '@/shared/records/lot'
import { platingCapability } from '@/shared/rules/evaluation/plating-capability'
import { findingOf, requirement, set, type FactsInput } from '../facts-builder'
import { boardPlan, lot, needed, testOf, timer, times } from '../lots-builder'

const values = [...boardPlan, set(boardFinish, 'tin-lead-plated'), set(boardFinishMin, 5)]
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
  // (8 − 5) ÷ (3 · 1) = 1. Exact lower 95 % bound for n = 20 and index 1: 0.7013512 (noncentral t, computed with scipy).
  test('twenty specimens, index 1: at least 0.701 with 95 % confidence', () => {
    const finding = findingWith([plated(20, 8, 1)])
    expect(finding.margin?.found).toBeCloseTo(0.7013512, 6)
    expect(finding.found).toContain('at least 0.701')
    expect(finding.verdict).toBe('meets')
  })
  // The exact bound of index 0.8 passes 0.67 from 72 specimens on (same computation).
  test('an index that reaches the limit while its bound does not is open, and says how many would show it', () => {
    const finding = findingWith([plated(20, 7.4, 1)])
    expect(finding.verdict).toBe('undetermined')
    expect(finding.remedy?.message).toContain('72 specimens would show it: 52 more')
  })
  test('an index below the limit fails', () => {
    expect(findingWith([plated(20, 7, 1)]).verdict).toBe('fails')
    const requirements = [requirement(platingCapabilityMin, 1)]
    expect(findingWith([plated(20, 8.0001, 1)], { requirements }).verdict).toBe('undetermined')
    expect(findingWith([plated(20, 7.999, 1)], { requirements }).verdict).toBe('fails')
  })
  test('one specimen, or readings without spread, make no index', () => {
    const one = plated(20, 8, 1)
    const alike = one.tests.map((test) => ({
      ...test,
      readings: { ...test.readings, columns: { ...test.readings.columns, specimen: times(20, 's') } },
    }))
    expect(findingWith([{ ...one, tests: alike }]).found).toContain('one specimen makes no index')
    expect(findingWith([{ ...one, tests: alike }]).verdict).toBe('undetermined')
    expect(findingWith([plated(20, 8, 0)]).found).toContain('too coarse')
  })
  test('lots are judged each, and over one supplier’s lots nothing is claimed that a few do not show', () => {
    const two = [plated(20, 8, 0.5), plated(20, 9, 0.5, { id: 'B-02', code: 'B-02' })]
    const finding = findingWith(two)
    expect(finding.verdict).toBe('meets')
    expect(finding.parts?.map(({ verdict }) => verdict)).toEqual(['meets', 'meets', 'not applicable'])
    expect(finding.parts?.[2]?.found).toContain('too few lots to claim anything over lots')
    expect(finding.parts?.[2]?.remedy?.message).toMatch(/\d+ lots would show it/)
  })
  test('lots that differ widely fail together, though each is narrow', () => {
    const two = [plated(10, 8, 0.1), plated(10, 5.5, 0.1, { id: 'B-02', code: 'B-02' })]
    expect(findingWith(two).parts?.map(({ verdict }) => verdict)).toEqual(['meets', 'meets', 'fails'])
    const apart = [two[0]!, { ...two[1]!, supplier: 'Southgate' }]
    expect(findingWith(apart).verdict).toBe('meets')
  })
  test('nothing measured: open where it is planned, else not asked', () => {
    expect(findingWith([lot()]).verdict).toBe('not applicable')
    const planned = [
      ...values,
      set(lotsNeeded, [needed('bare board LX-41', 'bare board', 'plating-thickness')]),
    ]
    expect(findingWith([lot()], { values: planned }).verdict).toBe('undetermined')
  })
})
