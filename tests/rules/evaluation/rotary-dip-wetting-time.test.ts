import { describe, expect, test } from 'vitest'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import {
  acceptableQualityLevel,
  inspectionLevel,
  samplingScheme,
} from '@/shared/plan/parameters/evaluation-sampling'
import { wettingTimeMax } from '@/shared/plan/limits/evaluation-solderability'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import type { Requirement } from '@/shared/plan/requirement'
import type { Lot, LotTest } from '@/shared/records/lot'
import { rotaryDipWettingTime } from '@/shared/rules/evaluation/rotary-dip-wetting-time'
import { findingOf, requirement, set, type FactsInput } from '../facts-builder'
import {
  boardConditions,
  boardPlan,
  lot,
  needed,
  rejected,
  rotaryDip,
  stated,
  testOf,
  timer,
  times,
  wetted,
} from '../lots-builder'

const findingWith = (lots: readonly Lot[], over: FactsInput = {}) =>
  findingOf(rotaryDipWettingTime, { values: boardPlan, instruments: [timer], lots, ...over })
const tested = (...tests: LotTest[]) => lot({ tests })

// MIL-STD-105E tables I and II-A (published): 151 to 280 pieces at S-3 is letter D; at AQL 1.0 its arrow leads to 13
// pieces, accepts on 0. MIL-PRF-22684F 4.5.1.3.1.3 asks the same 13 with none failing.
describe('a lot of 200 boards at S-3, AQL 1.0', () => {
  test('is accepted on 13 specimens within 2 s', () => {
    const finding = findingWith([tested(rotaryDip(times(13, 1.5)))])
    expect(finding.verdict).toBe('meets')
    expect(finding.working[0]?.result).toBe(
      '13 pieces, accept on 0, reject on 1 (letter D, normal inspection)',
    )
  })
  test('says what 13 good ones prove: no more than the arithmetic allows', () => {
    // Of 200 with 39 nonconforming, 13 good ones are drawn with probability C(161,13)/C(200,13) = 0.0540; with
    // 40 nonconforming 0.0496 (computed). For an endless process the bound is 1 − 0.05^(1/13) = 20.6 %.
    expect(findingWith([tested(rotaryDip(times(13, 1.5)))]).found).toContain(
      '95 % confidence: at most 39 of 200 nonconforming (at most 19.5 %)',
    )
  })
  test('is rejected by one slow specimen', () => {
    const finding = findingWith([tested(rotaryDip([...times(12, 1.5), 2.1]))])
    expect(finding.verdict).toBe('fails')
    expect(finding.found).toContain('1 slow to wet')
    expect(finding.margin).toMatchObject({ found: 1, limit: 0, unit: 'pieces' })
    expect(finding.remedy?.message).toContain('Reject the lot')
  })
  test('exactly on the limit is good, but only just', () => {
    expect(findingWith([tested(rotaryDip([...times(12, 1.5), 2]))]).verdict).toBe('marginal')
    expect(findingWith([tested(rotaryDip([...times(12, 1.5), 1.79]))]).verdict).toBe('meets')
    expect(findingWith([tested(rotaryDip([...times(12, 1.5), 1.81]))]).verdict).toBe('marginal')
  })
  test('waits while specimens are missing', () => {
    const finding = findingWith([tested(rotaryDip(times(8, 1.5)))])
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toContain('5 more to test')
  })
  test('is rejected before the sample is full once the rejection number is reached', () => {
    expect(findingWith([tested(rotaryDip([...times(3, 1.5), 9]))]).verdict).toBe('fails')
  })
})

describe('wetting, non-wetting and dewetting', () => {
  const place = (specimen: string, outcome: string, wettingTimeS: number | null = null) => ({
    specimen,
    place: 'hole',
    outcome,
    wettingTimeS,
  })
  test('are counted apart', () => {
    const rows = [...wetted(times(11, 1)), place('x', 'non-wetting'), place('y', 'dewetting', 0.8)]
    const finding = findingWith([tested(testOf('rotary-dip', rows))])
    expect(finding.found).toContain('2 nonconforming: 1 non-wetting, 1 dewetting')
    expect(finding.verdict).toBe('fails')
  })
  test('a dewetted place is bad however fast it first wetted', () => {
    const rows = [...wetted(times(12, 1)), place('y', 'dewetting', 0.5)]
    expect(findingWith([tested(testOf('rotary-dip', rows))]).verdict).toBe('fails')
  })
  test('two bad places on one specimen are one bad specimen', () => {
    const rows = [...wetted(times(12, 1)), place('x', 'non-wetting'), place('x', 'dewetting')]
    expect(findingWith([tested(testOf('rotary-dip', rows))]).margin?.found).toBe(1)
  })
  test('many places on few specimens do not fill the sample', () => {
    const rows = Array.from({ length: 52 }, (_, at) => place(`s${at % 4}`, 'wetted', 1))
    const finding = findingWith([tested(testOf('rotary-dip', rows))])
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toContain('4 tested (52 places)')
  })
  test('a wetted place without a time is no pass', () => {
    const rows = [...wetted(times(12, 1)), place('z', 'wetted')]
    const finding = findingWith([tested(testOf('rotary-dip', rows))])
    expect(finding.verdict).toBe('fails')
    expect(finding.found).toContain('1 without a readable result')
  })
  test('a time that is no number is no pass', () => {
    expect(findingWith([tested(rotaryDip([...times(12, 1), Number.NaN]))]).verdict).toBe('fails')
  })
})

describe('results that do not count', () => {
  test('other conditions are not compared', () => {
    const hot = rotaryDip(times(13, 1), { conditions: { ...boardConditions, bathTemperatureC: 245 } })
    const finding = findingWith([tested(hot)])
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toContain('bath at 245 °C, not 235 °C ± 5 K')
  })
  test('a timer out of calibration proves nothing', () => {
    const late = rotaryDip(times(13, 1), { testedOn: '2026-07-06' })
    const finding = findingWith([tested(late)])
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toContain('T-07 was due on 2026-07-05')
  })
  test('a good test beside one set aside decides, and says what was set aside', () => {
    const hot = rotaryDip(times(13, 9), { conditions: { ...boardConditions, flux: 'process-flux' } })
    const finding = findingWith([tested(hot, rotaryDip(times(13, 1), { id: 'again' }))])
    expect(finding.verdict).toBe('meets')
    expect(finding.notes?.join(' ')).toContain('set aside: conditions unlike')
  })
})

describe('lots and the plan', () => {
  test('no lot yet: says what to record', () => {
    const finding = findingWith([])
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toContain('bare board LX-41')
    expect(finding.remedy?.message).toContain('Record the lot')
  })
  test('an untested lot says how many to test', () => {
    expect(findingWith([lot()]).found).toContain('13 pieces')
  })
  test('every lot is judged; the worst speaks', () => {
    const good = lot({ code: 'B-01', id: 'B-01', tests: [rotaryDip(times(13, 1))] })
    const nonconforming = lot({
      code: 'B-02',
      id: 'B-02',
      receivedOn: '2026-02-05',
      tests: [rotaryDip(times(13, 3))],
    })
    const finding = findingWith([nonconforming, good])
    expect(finding.verdict).toBe('fails')
    expect(finding.found).toContain('lot B-02')
    expect(finding.parts?.map(({ verdict }) => verdict)).toEqual(['meets', 'fails'])
  })
  test('a rejected lot is shown and holds nothing up', () => {
    const good = lot({ code: 'B-01', id: 'B-01', tests: [rotaryDip(times(13, 1))] })
    const nonconforming = lot({
      code: 'B-02',
      id: 'B-02',
      tests: [rotaryDip(times(13, 3))],
      disposition: rejected,
    })
    expect(findingWith([good, nonconforming]).verdict).toBe('meets')
    expect(findingWith([nonconforming]).verdict).toBe('undetermined')
  })
  test('a part is recognised whatever the capitals and spaces', () => {
    const finding = findingWith([lot({ part: ' Bare  board lx-41', tests: [rotaryDip(times(13, 1))] })])
    expect(finding.verdict).toBe('meets')
  })
  test('where the plan asks for no rotary dip, none is missed', () => {
    const values = [...boardPlan, set(lotsNeeded, [needed('T1', 'component', 'dip-and-look')])]
    expect(findingWith([], { values }).verdict).toBe('not applicable')
  })
  test('without a sampling plan nothing is judged', () => {
    const finding = findingWith([tested(rotaryDip(times(13, 1)))], { values: boardPlan.slice(0, 2) })
    expect(finding.verdict).toBe('undetermined')
    expect(finding.missing).toEqual(['Inspection level', 'Acceptable quality level'])
  })
  test('a lot of one is tested whole', () => {
    const finding = findingWith([lot({ quantity: 1, tests: [rotaryDip([1])] })])
    expect(finding.verdict).toBe('meets')
    expect(finding.notes?.join(' ')).toContain('takes all of it')
  })
  test('a stricter contract rules', () => {
    const finding = findingWith([tested(rotaryDip(times(13, 1.5)))], {
      requirements: [requirement(wettingTimeMax, 1)],
    })
    expect(finding.verdict).toBe('fails')
    expect(finding.limit).toContain('1 s (CS-100 issue 2)')
  })
})

// Acceptance numbers above zero: 200 pieces at level II is letter G; AQL 2.5 takes 32, accepts on 2.
describe('a plan that accepts on two', () => {
  const values = [...boardPlan, set(inspectionLevel, 'II'), set(acceptableQualityLevel, '2.5')]
  const withNonconforming = (nonconforming: number) =>
    findingWith([tested(rotaryDip([...times(32 - nonconforming, 1), ...times(nonconforming, 3)]))], {
      values,
    }).verdict
  test.each([
    [0, 'meets'],
    [1, 'meets'],
    [2, 'marginal'],
    [3, 'fails'],
  ] as const)('%s bad: %s', (nonconforming, verdict) => {
    expect(withNonconforming(nonconforming)).toBe(verdict)
  })
})

describe('other kinds of plan', () => {
  test('zero acceptance asks for what finds 10 % bad with 90 % confidence', () => {
    // 20 nonconforming of 200 are missed by 20 pieces with probability C(180,20)/C(200,20) = 0.1085, by 21 with 0.0965
    // (computed); the binomial 22 (MIL-STD-883 method 2003, from memory) is for an endless lot.
    const values = [...boardPlan, set(samplingScheme, 'zero-acceptance')]
    expect(findingWith([lot()], { values }).found).toContain(
      '21 pieces, none may be nonconforming (finds 20 nonconforming',
    )
  })
  test('a double plan stops at a clear first sample', () => {
    // MIL-STD-105E table III-A (one transcription read): 1000 pieces at level II is letter J, AQL 1.0 double: 50 then 50, 0/3 then 3/4.
    const values = [...boardPlan, set(samplingScheme, 'double'), set(inspectionLevel, 'II')]
    const of = (rows: readonly number[]) =>
      findingWith([lot({ quantity: 1000, tests: [rotaryDip(rows)] })], { values })
    expect(of(times(50, 1)).verdict).toBe('meets')
    expect(of([...times(49, 1), 3]).found).toContain('50 more to test')
    expect(of([...times(99, 1), 3]).verdict).toBe('meets')
    // Drawn together, the first fifty decide where they can; what the others hold comes after.
    expect(of([...times(97, 1), 3, 3, 3]).verdict).toBe('meets')
    expect(of([...times(97, 1), 3, 3, 3]).found).toContain(
      'accepted on its first sample (0 nonconforming of 50)',
    )
    expect(of([3, ...times(97, 1), 3, 3]).verdict).toBe('marginal')
    expect(of([3, ...times(96, 1), 3, 3, 3]).verdict).toBe('fails')
    expect(of([...times(47, 1), 3, 3, 3]).verdict).toBe('fails')
  })
  test('a first sample that rejected is not tested back to acceptance', () => {
    // The same plan: three bad among the first 50 reject, though 3 of 100 would be accepted.
    const values = [...boardPlan, set(samplingScheme, 'double'), set(inspectionLevel, 'II')]
    const of = (...rows: (readonly number[])[]) =>
      findingWith(
        [lot({ quantity: 1000, tests: rows.map((each, at) => ({ ...rotaryDip(each), id: `t${at}` })) })],
        { values },
      )
    expect(of([3, 3, 3, ...times(47, 1)]).verdict).toBe('fails')
    expect(of([3, 3, 3, ...times(48, 1)]).verdict).toBe('fails')
    expect(of([3, 3, 3, ...times(97, 1)]).verdict).toBe('fails')
  })
  test('a variables plan judges mean and spread', () => {
    // ANSI/ASQ Z1.9: letter F, 10 pieces, AQL 1.0, k = 1.72 (table B-1, published).
    const values = [...boardPlan, set(samplingScheme, 'variables'), set(inspectionLevel, 'II')]
    const of = (rows: readonly number[]) =>
      findingWith([lot({ quantity: 100, tests: [rotaryDip(rows)] })], { values })
    expect(of([1, 1.1, 0.9, 1, 1.2, 0.8, 1, 1.1, 0.9, 1]).verdict).toBe('meets')
    const wide = of([1, 1.9, 0.3, 1.8, 1.2, 0.5, 1, 1.9, 0.4, 1])
    expect(wide.verdict).toBe('fails')
    expect(wide.margin).toMatchObject({ limit: 1.72, direction: 'at least' })
    expect(of([1, 1.1]).found).toContain('8 more to test')
    expect(of([...times(9, 1), Number.NaN]).verdict).toBe('fails')
    expect(of(times(10, 2)).verdict).toBe('undetermined')
  })
})

// Rotary dip of boards (common practice): 2 s at 235 °C in Sn60Pb40 with non-activated rosin.
describe('the default of 2 s belongs to its bath, its solder and its flux', () => {
  const under = (
    over: Partial<Record<keyof typeof boardConditions, string | number>>,
    requirements: Requirement[] = [],
  ) => {
    const conditions = { ...boardConditions, ...over } as typeof boardConditions
    return findingOf(rotaryDipWettingTime, {
      values: [
        ...boardPlan.filter(([key]) => key !== testConditions.key),
        set(testConditions, [stated('rotary-dip', conditions)]),
      ],
      instruments: [timer],
      lots: [lot({ tests: [rotaryDip(times(13, 1), { conditions })] })],
      requirements,
    })
  }
  test.each([
    { bathTemperatureC: 255 },
    { flux: 'rosin-activated-0.5' },
    { flux: 'process-flux' },
    { alloy: 'Sn96.5Ag3Cu0.5' },
  ])('eased to %j nothing meets', (eased) => {
    const finding = under(eased)
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toContain('holds at 235 °C in Sn60Pb40 or Sn63Pb37')
  })
  test('a cooler bath and an ageing make it harder', () => {
    expect(under({ bathTemperatureC: 230, ageing: 'steam-8h' }).verdict).toBe('meets')
  })
  test('a time stated for the programme is taken for its own conditions', () => {
    const stated = [requirement(wettingTimeMax, 1.8)]
    expect(under({ bathTemperatureC: 255, alloy: 'Sn96.5Ag3Cu0.5' }, stated).verdict).toBe('meets')
  })
})

describe('readings that are not normal', () => {
  const values = [...boardPlan, set(samplingScheme, 'variables'), set(inspectionLevel, 'II')]
  const of = (rows: readonly number[]) =>
    findingOf(rotaryDipWettingTime, {
      values,
      instruments: [timer],
      lots: [lot({ quantity: 100, tests: [rotaryDip(rows)] })],
    })
  // ANSI/ASQ Z1.9: letter F, 10 pieces; counted at level II, AQL 1.0, 100 pieces: letter F, 20 pieces with
  // none nonconforming, the arrow leads to 13 (MIL-STD-105E tables I and II-A).
  const skewed = [0.8, 0.82, 0.81, 0.83, 0.8, 0.84, 0.82, 0.81, 0.83, 1.9]
  test('are counted instead, in the sample that counting asks for', () => {
    const finding = of(skewed)
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toContain('not normal (p ')
    expect(finding.found).toContain('pieces are counted instead')
  })
  test('and with enough pieces the count decides', () => {
    const finding = of([...skewed, ...times(10, 0.82)])
    expect(finding.found).toContain('; accepted.')
    expect(finding.margin).toMatchObject({ limit: 2, unit: 's' })
  })
  test('normal readings are judged by mean and spread, and the look is stated', () => {
    const finding = of([1, 1.1, 0.9, 1.02, 1.2, 0.8, 0.98, 1.12, 0.88, 1.05])
    expect(finding.found).toContain('Nothing speaks against normal readings')
    expect(finding.margin).toMatchObject({ limit: 1.72 })
  })
  test('too few readings to look are said to be', () => {
    const small = findingOf(rotaryDipWettingTime, {
      values: [...boardPlan, set(samplingScheme, 'variables'), set(inspectionLevel, 'S-3')],
      instruments: [timer],
      lots: [lot({ quantity: 100, tests: [rotaryDip([1, 1.1, 0.9, 1.05])] })],
    })
    expect(small.found).toContain('too few or too alike to look')
  })
})
