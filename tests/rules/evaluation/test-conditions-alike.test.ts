import { describe, expect, test } from 'vitest'
import { testTemperatureToleranceMax } from '@/shared/plan/limits/evaluation-solderability'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import type { Lot } from '@/shared/records/lot'
import { testConditionsAlike } from '@/shared/rules/evaluation/test-conditions-alike'
import { findingOf, requirement, set, type FactsInput } from '../facts-builder'
import { boardConditions, boardPlan, lot, rejected, rotaryDip, testOf } from '../lots-builder'

const under = (conditions: Readonly<Record<string, string | number | undefined>>, over: Partial<Lot> = {}) =>
  lot({ tests: [rotaryDip([1], { conditions: { ...boardConditions, ...conditions } })], ...over })
const findingWith = (lots: readonly Lot[], over: FactsInput = {}) =>
  findingOf(testConditionsAlike, { values: boardPlan, lots, ...over })

describe('conditions beside the specified ones', () => {
  test('alike: compared', () => {
    expect(findingWith([under({})]).verdict).toBe('meets')
  })
  // 235 ± 5 °C: IEC 60068-2-20, Test Ta method 1 (from memory).
  test.each([
    [230, 'meets'],
    [240, 'meets'],
    [229.9, 'fails'],
    [240.1, 'fails'],
    [Number.NaN, 'fails'],
  ] as const)('a bath at %s °C: %s', (bathTemperatureC, verdict) => {
    expect(findingWith([under({ bathTemperatureC })]).verdict).toBe(verdict)
  })
  test.each([
    [{ alloy: 'Sn63Pb37' }, 'solder Sn63Pb37, not Sn60Pb40'],
    [{ flux: 'rosin-activated-0.5' }, 'flux Rosin, activated, 0.5 % halide, not Rosin, non-activated'],
    [{ ageing: 'steam-8h' }, 'ageing Steam, 8 h, not None: as received'],
    [{ ageing: undefined }, 'ageing not stated'],
    [{ bathTemperatureC: undefined }, 'bath temperature not stated'],
  ])('%o is not compared', (conditions, message) => {
    const finding = findingWith([under(conditions)])
    expect(finding.verdict).toBe('fails')
    expect(finding.found).toContain(message)
  })
  test('a method with no specified conditions is not compared', () => {
    const balance = lot({ tests: [testOf('wetting-balance', [])] })
    expect(findingWith([balance]).found).toContain('no conditions are specified for wetting balance')
  })
  test('methods that conditions do not bear on are left alone', () => {
    expect(findingWith([lot({ tests: [testOf('plating-thickness', [])] })]).verdict).toBe('undetermined')
  })
  test('a tighter tolerance by contract rules', () => {
    const requirements = [requirement(testTemperatureToleranceMax, 2)]
    expect(findingWith([under({ bathTemperatureC: 238 })], { requirements }).verdict).toBe('fails')
  })
})

describe('what is made of an unlike test', () => {
  test('beside an alike one it is information', () => {
    const tests = [...under({}).tests, ...under({ bathTemperatureC: 260 }).tests]
    const finding = findingWith([lot({ tests })])
    expect(finding.verdict).toBe('meets')
    expect(finding.parts?.[0]?.found).toContain('kept for information')
  })
  test('of a rejected lot nobody compares it', () => {
    expect(findingWith([under({ bathTemperatureC: 260 }, { disposition: rejected })]).verdict).toBe(
      'not applicable',
    )
  })
  // J-STD-002 keeps tests in tin-lead and in lead-free solder apart (from memory).
  test('a tin-lead test says little of a lead-free joint: close at best', () => {
    const inFamily = (family: 'tin-lead' | 'lead-free') =>
      findingWith([under({})], { values: [...boardPlan, set(alloyFamily, family)] })
    expect(inFamily('tin-lead').verdict).toBe('meets')
    expect(inFamily('lead-free').verdict).toBe('marginal')
    expect(inFamily('lead-free').found).toContain('while the joints are lead-free')
  })
})
