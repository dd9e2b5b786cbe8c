import { describe, expect, test } from 'vitest'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import { limitingQualityMax } from '@/shared/plan/limits/evaluation-sampling'
import {
  acceptableQualityLevel,
  inspectionLevel,
  samplingScheme,
} from '@/shared/plan/parameters/evaluation-sampling'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import type { Lot } from '@/shared/records/lot'
import { platedHoleRise } from '@/shared/rules/evaluation/plated-hole-rise'
import { receivingCheck } from '@/shared/rules/evaluation/receiving-check'
import { samplingPlanRisk } from '@/shared/rules/evaluation/sampling-plan-risk'
import { solderFloatSoundness } from '@/shared/rules/evaluation/solder-float-soundness'
import type { AnyRule } from '@/shared/rules/rule'
import { findingOf, requirement, set, type FactsInput } from '../facts-builder'
import { boardPlan, lot, needed, rejected, stated, testOf, timer } from '../lots-builder'

const values = [
  ...boardPlan,
  set(lotsNeeded, [
    needed('bare board LX-41', 'bare board', 'plated-hole-rise'),
    needed('laminate', 'laminate', 'solder-float'),
    needed('flux', 'consumable', 'receiving-check'),
  ]),
  set(testConditions, [stated('plated-hole-rise')]),
]
const findingWith = (rule: AnyRule, lots: readonly Lot[]) =>
  findingOf(rule, { values, instruments: [timer], lots })
const rows = (outcomes: readonly string[], more: Readonly<Record<string, number | string>> = {}) =>
  outcomes.map((outcome, at) => ({ specimen: `s${at}`, hole: 'H1', outcome, ...more }))
const thirteen = (outcome: string) => Array.from({ length: 13 }, () => outcome)

// J-STD-003 (from memory): solder rises in all holes and wets the wall.
describe('rise in plated holes', () => {
  const rise = (outcomes: readonly string[], risePct: number) =>
    findingWith(platedHoleRise, [lot({ tests: [testOf('plated-hole-rise', rows(outcomes, { risePct }))] })])
  test('risen to the top is good', () => {
    expect(rise(thirteen('wetted'), 100).verdict).toBe('meets')
  })
  test('short of the top is not', () => {
    expect(rise(thirteen('wetted'), 99).verdict).toBe('fails')
  })
  test('a full hole that dewetted is not', () => {
    const finding = rise([...thirteen('wetted').slice(1), 'dewetting'], 100)
    expect(finding.verdict).toBe('fails')
    expect(finding.found).toContain('1 dewetting')
  })
})

describe('solder float of laminate', () => {
  const float = (outcomes: readonly string[], over: Readonly<Record<string, number>> = {}) =>
    findingWith(solderFloatSoundness, [
      lot({
        kind: 'laminate',
        part: 'laminate',
        tests: [
          testOf('solder-float', rows(outcomes), {
            conditions: { bathTemperatureC: 288, floatS: 10, ...over },
          }),
        ],
      }),
    ])
  test('sound specimens, whatever the solderability conditions', () => {
    expect(float(thirteen('sound')).verdict).toBe('meets')
  })
  // IPC-TM-650 2.4.13.1 (from memory): 288 ± 5 °C for 10 s.
  test.each<Readonly<Record<string, number>>>([
    { bathTemperatureC: 282 },
    { floatS: 9 },
    { bathTemperatureC: 200, floatS: 1 },
  ])('an easier float shows nothing: %j', (easier) => {
    const finding = float(thirteen('sound'), easier)
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toContain('less than 283 °C for 10 s')
  })
  test('a hotter or longer one does', () => {
    expect(float(thirteen('sound'), { bathTemperatureC: 295, floatS: 20 }).verdict).toBe('meets')
  })
  test.each(['blistering', 'delamination', 'measling', 'lifted land', ''])('“%s” rejects', (outcome) => {
    expect(float([...thirteen('sound').slice(1), outcome]).verdict).toBe('fails')
  })
})

describe('receiving check', () => {
  const check = (outcomes: readonly string[], compared = 'identity') =>
    findingWith(receivingCheck, [
      lot({
        kind: 'consumable',
        part: 'Flux',
        tests: [testOf('receiving-check', rows(outcomes, { checked: compared }))],
      }),
    ])
  test('as ordered', () => {
    expect(check(thirteen('as ordered')).verdict).toBe('meets')
  })
  // Common practice, no published source: the part and its revision are compared before anything else.
  test('packing alone shows nothing of what is in it', () => {
    const finding = check(thirteen('as ordered'), 'packing')
    expect(finding.verdict).toBe('undetermined')
    expect(check([...thirteen('as ordered').slice(1), 'not as ordered'], 'packing').found).toContain(
      '1 not as ordered',
    )
  })
  test('not as ordered', () => {
    expect(check([...thirteen('as ordered').slice(1), 'not as ordered']).found).toContain('1 not as ordered')
  })
})

describe('what the sampling plan lets pass', () => {
  const risk = (over: FactsInput = {}, lots: readonly Lot[] = [lot()]) =>
    findingOf(samplingPlanRisk, { values: boardPlan, instruments: [timer], lots, ...over })
  // 13 pieces with none nonconforming: 16.2 % passes one time in ten (computed; the sample of MIL-PRF-22684F).
  test('13 on 0 is inside 20 %', () => {
    const finding = risk()
    expect(finding.verdict).toBe('meets')
    expect(finding.margin?.found).toBeCloseTo(16.23, 2)
  })
  test('a plan of five lets far more pass, and the level that mends it is named', () => {
    // AQL 2.5: 5 pieces on 0, 1 − 0.1^(1/5) = 36.9 %.
    const finding = risk({ values: [...boardPlan, set(acceptableQualityLevel, '2.5')] })
    expect(finding.verdict).toBe('fails')
    expect(finding.margin?.found).toBeCloseTo(36.9, 1)
    expect(finding.remedy?.message).toContain('At inspection level II: 32 pieces')
  })
  test('the level that the remedy names really meets', () => {
    const mended = [...boardPlan, set(acceptableQualityLevel, '2.5'), set(inspectionLevel, 'II')]
    expect(risk({ values: mended }).verdict).toBe('meets')
  })
  test('exactly on a contract’s limit is inside', () => {
    const found = risk().margin!.found
    expect(risk({ requirements: [requirement(limitingQualityMax, found)] }).verdict).toBe('marginal')
    expect(risk({ requirements: [requirement(limitingQualityMax, found * (1 - 1e-6))] }).verdict).toBe(
      'fails',
    )
  })
  test('zero acceptance for 10 % at 90 % confidence', () => {
    expect(risk({ values: [...boardPlan, set(samplingScheme, 'zero-acceptance')] }).verdict).toBe('meets')
  })
  test('a lot taken whole leaves nothing to chance', () => {
    expect(risk({}, [lot({ quantity: 10 })]).verdict).toBe('meets')
  })
  // Level S-3 at AQL 1.0 is letter E in the table with 0 accepted, 13 pieces, for every size of lot.
  test('no lot, or a rejected one: the plan is judged as it is stated, for every size of lot', () => {
    for (const lots of [[], [lot({ disposition: rejected })]]) {
      const finding = risk({}, lots)
      expect(finding.verdict).toBe('meets')
      expect(finding.margin?.found).toBeCloseTo(16.23, 2)
    }
    expect(risk({ values: [...boardPlan, set(inspectionLevel, 'S-1')] }, []).verdict).toBe('meets')
  })
  // At AQL 2.5 level S-1 takes 5 pieces of any lot: 1 − 0.1^(1/5) = 36.9 % passes one time in ten.
  test('a plan that lets too much through of any lot fails before one comes', () => {
    const values = [...boardPlan, set(acceptableQualityLevel, '2.5'), set(inspectionLevel, 'S-1')]
    const finding = risk({ values }, [])
    expect(finding.verdict).toBe('fails')
    expect(finding.margin?.found).toBeCloseTo(36.9, 1)
    expect(finding.parts?.[0]?.about).toEqual({
      part: 'bare board LX-41',
      kind: 'bare board',
      method: 'rotary-dip',
    })
  })
  test('a plan that protects large lots only asks how large they will be', () => {
    const values = [...boardPlan, set(acceptableQualityLevel, '2.5'), set(inspectionLevel, 'II')]
    expect(risk({ values }, []).verdict).toBe('undetermined')
    const expecting = (lotSize: number) =>
      risk(
        {
          values: [
            ...values,
            set(lotsNeeded, [{ ...needed('bare board LX-41', 'bare board', 'rotary-dip'), lotSize }]),
          ],
        },
        [],
      ).verdict
    expect(expecting(40)).toBe('fails')
    expect(expecting(1000)).toBe('meets')
  })
  // 22 of none nonconforming: 1 − 0.1^(1/22) = 9.94 %; 5: 36.9 %.
  test('a sample stated for the part is judged in place of the programme’s', () => {
    const sampling = (sampleSize: number) =>
      risk(
        {
          values: [
            ...boardPlan,
            set(lotsNeeded, [{ ...needed('bare board LX-41', 'bare board', 'rotary-dip'), sampleSize }]),
          ],
        },
        [lot({ quantity: 5000 })],
      )
    expect(sampling(22).margin?.found).toBeCloseTo(9.94, 2)
    expect(sampling(22).verdict).toBe('meets')
    expect(sampling(5).verdict).toBe('fails')
    expect(sampling(5).remedy?.message).toContain('larger sample')
  })
})
