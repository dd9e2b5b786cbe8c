import { describe, expect, test } from 'vitest'
import { holeCopperMin, platingCoverageMin } from '@/shared/plan/limits/evaluation-plating'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import {
  boardFinish,
  boardFinishMin,
  boardFinishMax,
  leadFinishes,
  type LeadFinish,
} from '@/shared/plan/parameters/finishes'
import { leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import type { Lot, LotTest } from '@/shared/records/lot'
import { platingThickness } from '@/shared/rules/evaluation/plating-thickness'
import { findingOf, requirement, set, unchecked, type FactsInput } from '../facts-builder'
import { boardPlan, lot, needed, rejected, testOf, timer } from '../lots-builder'

/** Readings of exact mean and standard deviation, one a specimen. */
const thickness = (
  {
    count = 10,
    mean = 8,
    s = 0.5,
    place = 'track',
  }: { count?: number; mean?: number; s?: number; place?: string },
  conditions: Readonly<Record<string, string | number>> = {},
  over: Partial<LotTest> = {},
): LotTest => {
  const step = count > 1 ? s * Math.sqrt((count - 1) / count) : 0
  const rows = Array.from({ length: count }, (_, at) => ({
    specimen: `s${at}`,
    place,
    thicknessUm: mean + (at % 2 === 0 ? -step : step),
  }))
  return testOf('plating-thickness', rows, {
    conditions: { deposit: 'tin-lead', technique: 'x-ray', ...conditions },
    ...over,
  })
}

const values = [
  ...boardPlan,
  set(lotsNeeded, [needed('bare board LX-41', 'bare board', 'plating-thickness')]),
  set(boardFinish, 'tin-lead-plated'),
  set(boardFinishMin, 5),
]
const findingWith = (tests: readonly LotTest[], over: FactsInput & { lot?: Partial<Lot> } = {}) =>
  findingOf(platingThickness, { values, instruments: [timer], lots: [lot({ tests, ...over.lot })], ...over })

// k = 2.9109634 for ten readings, 95 % covered with 95 % confidence (NIST/SEMATECH e-Handbook 7.2.6.3).
describe('ten readings of tin-lead against 5 µm', () => {
  test('mean 8, s 0.5: the bound is 6.54 µm', () => {
    const finding = findingWith([thickness({})])
    expect(finding.verdict).toBe('meets')
    expect(finding.margin?.found).toBeCloseTo(6.5445, 3)
    expect(finding.working.map(({ label }) => label)).toEqual(['Specified', 'Factor k', 'Tolerance bound'])
    expect(finding.working[1]?.result).toBe('2.911')
  })
  test('mean 6.6, s 0.5: inside by less than a twentieth of the limit', () => {
    expect(findingWith([thickness({ mean: 6.6 })]).verdict).toBe('marginal')
  })
  test('a stated uncertainty is the guard band', () => {
    expect(findingWith([thickness({ mean: 6.6 }, { uncertaintyUm: 0.1 })]).verdict).toBe('meets')
    expect(findingWith([thickness({ mean: 7 }, { uncertaintyUm: 0.6 })]).verdict).toBe('marginal')
  })
  test('mean 6.2: too few readings, and how many would do', () => {
    // Room 2.4 s; k of 20 readings is 2.3960.
    const finding = findingWith([thickness({ mean: 6.2 })])
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toContain('too few specimens')
    expect(finding.remedy?.message).toContain('20 specimens would show it: take 10 more')
  })
  test('the number named really is enough', () => {
    expect(findingWith([thickness({ mean: 6.2, count: 20 })]).verdict).toBe('marginal')
    expect(findingWith([thickness({ mean: 6.1999, count: 18 })]).verdict).toBe('undetermined')
  })
  test('mean 5.5: no number of readings would do', () => {
    const finding = findingWith([thickness({ mean: 5.5 })])
    expect(finding.verdict).toBe('fails')
    expect(finding.remedy?.message).toContain('6.46 µm')
  })
  test('the mean the remedy names really meets', () => {
    expect(findingWith([thickness({ mean: 6.4555 })]).verdict).toBe('marginal')
  })
  test('a mean above the minimum is not enough by itself', () => {
    expect(findingWith([thickness({ mean: 7, s: 1.5 })]).verdict).toBe('fails')
  })
})

describe('readings on the same specimens', () => {
  /** Five specimens of exact means 7.2 … 8.8, each read so often within ± 0.05. */
  const grouped = (times: number) =>
    testOf(
      'plating-thickness',
      [7.2, 7.6, 8, 8.4, 8.8].flatMap((mean, at) =>
        Array.from({ length: times }, (_, reading) => ({
          specimen: `s${at}`,
          place: 'track',
          thicknessUm: mean + (reading % 2 === 0 ? -0.05 : 0.05),
        })),
      ),
      { conditions: { deposit: 'tin-lead', technique: 'x-ray' } },
    )
  const bound = (times: number) => findingWith([grouped(times)]).margin!.found
  // k = 4.2026795 for five readings, 95 % covered with 95 % confidence (noncentral t, computed with
  // scipy); s of the five means is 0.6325.
  test('are worth little more than one on each', () => {
    expect(bound(2)).toBeCloseTo(8 - 4.2026795 * Math.sqrt(0.4), 1)
    expect(bound(20)).toBeCloseTo(bound(2), 1)
  })
  test('of a single specimen show nothing of the others', () => {
    const rows = Array.from({ length: 30 }, (_, at) => ({
      specimen: 's',
      place: 'track',
      thicknessUm: 8 + (at % 3) / 10,
    }))
    const one = testOf('plating-thickness', rows, { conditions: { deposit: 'tin-lead', technique: 'x-ray' } })
    expect(findingWith([one]).verdict).toBe('undetermined')
  })
})

describe('readings that show little', () => {
  test('one reading has no spread', () => {
    expect(findingWith([thickness({ count: 1 })]).found).toContain('shows no spread between specimens')
    expect(findingWith([thickness({ count: 1 })]).verdict).toBe('undetermined')
    expect(findingWith([thickness({ count: 1, mean: 4 })]).verdict).toBe('fails')
  })
  test('readings all alike are too coarse to trust', () => {
    expect(findingWith([thickness({ s: 0 })]).verdict).toBe('marginal')
  })
  test('a reading that is no number proves nothing', () => {
    expect(findingWith([thickness({ mean: Number.NaN })]).verdict).toBe('undetermined')
  })
  test('an instrument out of calibration proves nothing', () => {
    const finding = findingWith([thickness({}, {}, { testedOn: '2026-07-06' })])
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toContain('T-07 was due')
  })
})

describe('against what is specified', () => {
  test('a most thickness is judged as well', () => {
    const thick = [...values, set(boardFinishMax, 9)]
    const finding = findingWith([thickness({})], { values: thick })
    expect(finding.verdict).toBe('undetermined')
    expect(finding.margin).toMatchObject({ limit: 9, direction: 'at most' })
    expect(findingWith([thickness({})], { values: [...values, set(boardFinishMax, 11)] }).verdict).toBe(
      'meets',
    )
  })
  // Two-sided k = 3.393 for ten readings, 95 % covered with 95 % confidence (ISO 16269-6, from memory;
  // tests/reference/statistics/tolerance.json, computed in R): 8 ± 3.393 · 0.5 is 6.30 to 9.70 µm.
  test('both sides together hold the share: the factor is the two-sided one', () => {
    const both = [...values, set(boardFinishMax, 11)]
    const finding = findingWith([thickness({})], { values: both })
    expect(finding.working.find(({ label }) => label === 'Factor k')?.result).toMatch(/^3\.39/)
    const max = (value: number) =>
      findingWith([thickness({}, { uncertaintyUm: 0 })], { values: [...values, set(boardFinishMax, value)] })
        .verdict
    expect(max(9.71)).toBe('meets')
    // Between the one-sided bound of 9.46 and the two-sided one more specimens are wanted.
    expect(max(9.6)).toBe('undetermined')
  })
  test('another deposit than the specified one is not compared', () => {
    const finding = findingWith([thickness({}, { deposit: 'gold' })])
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toContain('gold was measured')
  })
  test('an open specification is named', () => {
    const finding = findingWith([thickness({})], { values: values.slice(0, -1) })
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toContain('no least thickness for board finish yet')
  })
  test('a contract may ask for more of the lot', () => {
    // k for 99 % covered with 95 % confidence, ten readings: 3.9811178 (same source): 8 − 1.99 = 6.01.
    const finding = findingWith([thickness({})], { requirements: [requirement(platingCoverageMin, 99)] })
    expect(finding.margin?.found).toBeCloseTo(8 - 3.9811178 * 0.5, 4)
  })
})

describe('plated holes', () => {
  const withHoles = [...values, unchecked(leadHoles, [{ plated: true }] as unknown as LeadHole[])]
  const copper = (mean: number, s = 1) => thickness({ mean, s, place: 'hole' }, { deposit: 'copper' })
  test('are measured too', () => {
    const finding = findingWith([thickness({})], { values: withHoles })
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toContain('plated hole: no thickness reading')
    expect(findingWith([thickness({}), copper(30)], { values: withHoles }).verdict).toBe('meets')
  })
  test('track and hole are never thrown together', () => {
    const finding = findingWith([thickness({ mean: 9 }), thickness({ mean: 4, place: 'hole' })])
    expect(finding.parts?.map(({ verdict }) => verdict)).toEqual(['meets', 'fails'])
  })
  test('copper thinner than 80 % of its least counts as a void, whatever the mean', () => {
    // MIL-PRF-31032/1B 3.6.4.1 (published): 0.8 × 25 = 20 µm.
    const thin = testOf(
      'plating-thickness',
      [...Array.from({ length: 20 }, () => 40), 19.9].map((thicknessUm, at) => ({
        specimen: `s${at}`,
        place: 'hole',
        thicknessUm,
      })),
      { conditions: { deposit: 'copper', technique: 'microsection' } },
    )
    const finding = findingWith([thickness({}), thin])
    expect(finding.verdict).toBe('fails')
    expect(finding.found).toContain('counts as a void')
  })
  test('copper at the limit of 25 µm', () => {
    expect(findingWith([thickness({}), copper(25 + 2.92)]).verdict).toBe('marginal')
    const relaxed = requirement(holeCopperMin, 20, { relaxes: true })
    expect(findingWith([thickness({}), copper(25)], { requirements: [relaxed] }).verdict).toBe('meets')
  })
})

describe('component leads', () => {
  const finish = {
    component: 'T1',
    base: 'brass',
    barrier: 'copper',
    barrierUm: 3,
    coating: 'tin-lead',
    coatingUm: 5,
  }
  const leadValues = [
    ...boardPlan,
    set(lotsNeeded, [needed('transformer T1', 'component', 'plating-thickness')]),
    unchecked(leadFinishes, [finish] as unknown as LeadFinish[]),
  ]
  const leads = (tests: LotTest[], part = 'transformer T1') =>
    findingOf(platingThickness, {
      values: leadValues,
      instruments: [timer],
      lots: [lot({ kind: 'component', part, tests })],
    })
  test('are held to the lead finish of their row, coating and underlayer apart', () => {
    const coating = thickness({ place: 'lead' })
    const barrier = thickness({ mean: 2, s: 0.1, place: 'lead' }, { deposit: 'copper' }, { id: 'under' })
    expect(leads([coating]).verdict).toBe('meets')
    expect(leads([coating, barrier]).verdict).toBe('fails')
  })
  test('without a row have nothing to be held to', () => {
    expect(leads([thickness({ place: 'lead' })], 'relay K1').found).toContain('no row for this component')
  })
})

// MIL-PRF-38535K, table A-III (published): palladium 0.51 to 2.13 µm over nickel.
describe('silver and palladium on leads', () => {
  const coated = (coating: string, deposit: string, mean: number, s: number) =>
    findingOf(platingThickness, {
      values: [
        ...boardPlan,
        set(lotsNeeded, [needed('U1', 'component', 'plating-thickness')]),
        unchecked(leadFinishes, [
          {
            component: 'U1',
            base: 'copper',
            barrier: 'nickel',
            barrierUm: 1.27,
            coating,
            coatingUm: 0.51,
            coatingMostUm: 2.13,
          },
        ] as unknown as LeadFinish[]),
      ],
      instruments: [timer],
      lots: [
        lot({ kind: 'component', part: 'U1', tests: [thickness({ mean, s, place: 'lead' }, { deposit })] }),
      ],
    })
  test.each([
    ['nickel-palladium-gold', 'palladium'],
    ['silver', 'silver'],
  ])('%s is held to its row', (coating, deposit) => {
    expect(coated(coating, deposit, 1, 0.05).verdict).toBe('meets')
    expect(coated(coating, deposit, 0.4, 0.05).verdict).toBe('fails')
    expect(coated(coating, deposit, 2.2, 0.05).verdict).toBe('fails')
    expect(coated(coating, 'tin', 1, 0.05).verdict).toBe('undetermined')
  })
  test('are open until measured, whether planned or not', () => {
    const values = [
      ...boardPlan,
      unchecked(leadFinishes, [
        { component: 'U1', base: 'copper', barrier: 'none', coating: 'silver', coatingUm: 2 },
      ] as unknown as LeadFinish[]),
    ]
    const leads = (tests: LotTest[]) =>
      findingOf(platingThickness, {
        values,
        instruments: [timer],
        lots: [lot({ kind: 'component', part: 'U1', tests })],
      })
    expect(leads([]).verdict).toBe('undetermined')
    const copper = thickness({ place: 'lead' }, { deposit: 'copper' })
    expect(leads([copper]).parts?.map(({ found }) => found)).toContain('its silver was not measured.')
    expect(leads([thickness({ mean: 3, s: 0.1, place: 'lead' }, { deposit: 'silver' })]).verdict).toBe(
      'meets',
    )
  })
  test('a share of the limit is the guard, however thin the coat', () => {
    expect(coated('silver', 'silver', 0.52 + 3.4 * 0.005, 0.005).verdict).toBe('marginal')
  })
})

describe('the gauge', () => {
  /** Two people who read the same three parts very differently. */
  const study = ['p1', 'p2', 'p3'].flatMap((part, at) =>
    ['A', 'B'].flatMap((appraiser) =>
      [1, 2].map((trial) => ({
        id: `${part}${appraiser}${trial}`,
        study: 'S-9',
        instrumentTag: timer.tag,
        part,
        appraiser,
        trial,
        reading: at * 0.1 + (appraiser === 'A' ? 0 : 1) + trial * 0.3,
      })),
    ),
  )
  test('that a study shows to be unfit is flagged where it was used', () => {
    const finding = findingWith([thickness({})], { records: { 'gauge-reading': study } })
    expect(finding.verdict).toBe('marginal')
    expect(finding.found).toContain('Read with T-07, which study S-9 shows to be unfit')
  })
  test('that is unfit mends nothing', () => {
    expect(findingWith([thickness({ mean: 4 })], { records: { 'gauge-reading': study } }).verdict).toBe(
      'fails',
    )
  })
})

describe('what is asked', () => {
  test('of a laminate that was never measured is open, not an error', () => {
    const asked = [...boardPlan, set(lotsNeeded, [needed('laminate', 'laminate', 'plating-thickness')])]
    const lots = [lot({ kind: 'laminate', part: 'laminate' })]
    expect(findingOf(platingThickness, { values: asked, lots }).verdict).toBe('undetermined')
  })
  test('planned and not measured is open', () => {
    expect(findingWith([]).verdict).toBe('undetermined')
    expect(findingOf(platingThickness, { values }).found).toContain('no lot has any yet')
  })
  test('neither specified nor planned is settled, specified alone is open', () => {
    expect(findingOf(platingThickness, { values: boardPlan }).verdict).toBe('not applicable')
    const specified = [...boardPlan, set(boardFinish, 'tin-lead-plated'), set(boardFinishMin, 5)]
    expect(findingOf(platingThickness, { values: specified }).verdict).toBe('undetermined')
  })
  test('a rejected lot is left out', () => {
    const finding = findingWith([thickness({ mean: 3 })], { lot: { disposition: rejected } })
    expect(finding.found).toContain('no lot has any yet')
  })
})
