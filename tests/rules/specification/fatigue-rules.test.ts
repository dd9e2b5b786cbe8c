import { describe, expect, test } from 'vitest'
import type { LaminateKey } from '@/shared/materials/laminates'
import { surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import { laminate } from '@/shared/plan/parameters/laminate'
import { alloyFamily, serviceYears } from '@/shared/plan/parameters/programme'
import {
  cycleTest,
  leadlessParts,
  leadlessPresent,
  steadyService,
  useCycles,
  type CycleTest,
  type LeadlessPart,
  type UseCycle,
} from '@/shared/plan/parameters/thermal-fatigue'
import { leadlessFatigue } from '@/shared/rules/specification/leadless-fatigue'
import { thermalFatigue } from '@/shared/rules/specification/thermal-fatigue'
import { findingOf, set, type SetValue } from '../facts-builder'

const daily = (over: Partial<UseCycle> = {}): UseCycle => ({
  cycle: 'day',
  swingK: 35,
  hottestC: 60,
  perYear: 365,
  dwellMin: 720,
  ...over,
})
const chamber = (cycles: number): CycleTest => ({
  test: '0/100 °C',
  swingK: 100,
  hottestC: 100,
  perDay: 48,
  dwellMin: 10,
  cycles,
})

describe('temperature cycles to be shown by test', () => {
  const judged = (family: 'tin-lead' | 'lead-free', cycles: readonly UseCycle[], test?: CycleTest) =>
    findingOf(thermalFatigue, {
      values: [
        set(alloyFamily, family),
        set(serviceYears, 20),
        set(useCycles, cycles),
        ...(test ? [set(cycleTest, [test])] : []),
      ],
    })
  // Norris–Landzberg, tin-lead, test 0/100 °C at 48 a day against 35 K to 60 °C daily: factor 3.1875,
  // 7300 cycles of service are 2290.2 of test (computed by an independent program).
  test('20 years of daily swings need 2290 test cycles by the tin-lead constants', () => {
    const finding = judged('tin-lead', [daily()], chamber(3000))
    expect(finding.margin?.limit).toBeCloseTo(2290.2, 1)
    expect(finding.verdict).toBe('meets')
  })
  test.each([
    [2290, 'fails'],
    [2291, 'marginal'],
    [2749, 'meets'],
  ] as const)('%i cycles %s', (cycles, verdict) => {
    expect(judged('tin-lead', [daily()], chamber(cycles)).verdict).toBe(verdict)
  })
  // The 2005 tin-silver-copper constants give 400.3 in their dwell form; the tin-lead ones ask more and decide.
  test('lead-free shows both sets and takes the greater need', () => {
    const finding = judged('lead-free', [daily()], chamber(3000))
    expect(finding.found).toContain('401 cycles')
    expect(finding.margin?.limit).toBeCloseTo(2290.2, 1)
    expect(finding.notes?.join(' ')).toContain('No set of constants is agreed')
  })
  test('swings add up', () => {
    const twice = judged(
      'tin-lead',
      [daily({ perYear: 182.5 }), daily({ cycle: 'night', perYear: 182.5 })],
      chamber(3000),
    )
    // Half as many a year is a slower cycle, which does more damage: (1/2)^(1/3) of the factor.
    expect(twice.margin!.limit).toBeCloseTo(2290.2 * 2 ** (1 / 3), 0)
  })
  test('the cycles of the remedy meet', () => {
    const { remedy } = judged('tin-lead', [daily()], chamber(100))
    const cycles = Number(/at least (\d+) cycles/.exec(remedy?.message ?? '')?.[1])
    expect(judged('tin-lead', [daily()], chamber(cycles)).verdict).toBe('meets')
  })
  test('cycles without a test cannot be judged; cycles that nobody specified are not taken as none', () => {
    expect(judged('tin-lead', [daily()]).verdict).toBe('undetermined')
    expect(
      findingOf(thermalFatigue, { values: [set(alloyFamily, 'tin-lead'), set(serviceYears, 20)] }),
    ).toMatchObject({ verdict: 'undetermined', missing: [useCycles.label] })
  })
  test('a service stated to be level asks no test', () => {
    const values = [set(alloyFamily, 'tin-lead'), set(serviceYears, 20), set(steadyService, true)]
    expect(findingOf(thermalFatigue, { values }).verdict).toBe('not applicable')
  })
  // The constants known are of tin-lead and tin-silver-copper; none of tin-bismuth (common knowledge of the trade).
  test('tin-bismuth has no constants of acceleration', () => {
    const values = [
      set(alloyFamily, 'lead-free'),
      set(serviceYears, 20),
      set(useCycles, [daily()]),
      set(cycleTest, [chamber(1e5)]),
      set(solderAlloy, 'sn42bi58'),
    ]
    expect(findingOf(thermalFatigue, { values }).verdict).toBe('undetermined')
  })
  test('says that it is an extrapolation for pins', () => {
    expect(judged('tin-lead', [daily()], chamber(3000)).cautions?.[0]).toContain('extrapolation')
  })
})

describe('leadless parts', () => {
  const chip: LeadlessPart = { part: 'C1', halfSpanMm: 1.5, heightMm: 0.1, expansionPpmK: 7 }
  const judged = (
    part: LeadlessPart | undefined,
    { family = 'tin-lead' as 'tin-lead' | 'lead-free', grade = 'fr-4' as LaminateKey, years = 20 } = {},
  ) =>
    findingOf(leadlessFatigue, {
      values: [
        set(alloyFamily, family),
        set(serviceYears, years),
        set(laminate, grade),
        set(useCycles, [daily()]),
        ...(part ? [set(leadlessParts, [part])] : []),
      ],
    })
  // By hand: Δγ = 15 · 7·10⁻⁶ · 35 = 0.003675; c = −0.442 − 6·10⁻⁴ · 42.5 + 0.0174 · ln 1.5 = −0.460445;
  // N₅₀ = ½ · (0.65/0.003675)^(1/0.460445) = 38 176; to 0.1 %: · (0.0010005/0.693147)^¼ = 0.19491: 7441; 7300/7441 = 0.981.
  test('a small chip uses 98 % of its life in 20 years of daily 35 K', () => {
    const finding = judged(chip)
    expect(finding.margin?.found).toBeCloseTo(0.981, 2)
    expect(finding.verdict).toBe('marginal')
  })
  test('a larger part or a longer service fails, a smaller one meets', () => {
    expect(judged({ ...chip, halfSpanMm: 5 }).verdict).toBe('fails')
    expect(judged(chip, { years: 40 }).verdict).toBe('fails')
    expect(judged({ ...chip, halfSpanMm: 0.5 }).verdict).toBe('meets')
  })
  test('for lead-free the constants of tin-lead warn but do not acquit', () => {
    expect(judged({ ...chip, halfSpanMm: 0.5 }, { family: 'lead-free' }).verdict).toBe('marginal')
  })
  test('a part that expands like the board is not strained', () => {
    expect(judged({ ...chip, expansionPpmK: 14 }).verdict).toBe('meets')
  })
  test('a laminate of unknown expansion cannot be judged', () => {
    expect(judged(chip, { grade: 'fr-2' }).verdict).toBe('undetermined')
  })
  describe('without a list of them', () => {
    const unlisted = (...values: SetValue[]) =>
      findingOf(leadlessFatigue, {
        values: [
          set(alloyFamily, 'tin-lead'),
          set(serviceYears, 20),
          set(laminate, 'fr-4'),
          set(useCycles, [daily()]),
          ...values,
        ],
      })
    test.each([
      ['nothing is said', [], 'undetermined'],
      ['400 surface-mount joints are declared', [set(surfaceMountJoints, 400)], 'undetermined'],
      ['they are said to be there', [set(leadlessPresent, true)], 'undetermined'],
      [
        'they are said to be there, with no surface-mount joint',
        [set(surfaceMountJoints, 0), set(leadlessPresent, true)],
        'undetermined',
      ],
      ['no surface-mount joint is declared', [set(surfaceMountJoints, 0)], 'not applicable'],
      [
        'none is said to be there',
        [set(surfaceMountJoints, 400), set(leadlessPresent, false)],
        'not applicable',
      ],
    ] as const)('%s', (_, values, verdict) => {
      expect(unlisted(...values).verdict).toBe(verdict)
    })
  })
  test('listed without cycles they are judged only where service is said to be level', () => {
    const listed = [
      set(alloyFamily, 'tin-lead'),
      set(serviceYears, 20),
      set(laminate, 'fr-4'),
      set(leadlessParts, [chip]),
    ]
    expect(findingOf(leadlessFatigue, { values: listed })).toMatchObject({
      verdict: 'undetermined',
      missing: [useCycles.label],
    })
    const level = [...listed, set(steadyService, true)]
    expect(findingOf(leadlessFatigue, { values: level }).verdict).toBe('not applicable')
  })
})
