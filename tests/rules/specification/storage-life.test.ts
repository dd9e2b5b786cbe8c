import { describe, expect, test } from 'vitest'
import { GROWTH_LAWS } from '@/shared/materials/growth-laws'
import { DENSITY_GCM3, TIN_PER_CU6SN5, tinVolumeShare } from '@/shared/materials/metals'
import {
  coatingLeftUm,
  coatingNeededUm,
  compoundUm,
  growthBand,
  growthConstant,
  hoursUntilLeft,
} from '@/shared/physics/intermetallic'
import {
  boardFinish,
  boardFinishMin,
  boardNickel,
  leadFinishes,
  type LeadFinish,
} from '@/shared/plan/parameters/finishes'
import { boardStorageMonths, leadStorageMonths, storageTemperature } from '@/shared/plan/parameters/storage'
import type { BoardFinishKey } from '@/shared/materials/board-finishes'
import { storageLife } from '@/shared/rules/specification/storage-life'
import { afterCellRemedy } from '../cell-remedy'
import { afterRemedy, factsWith, findingOf, set, type SetValue } from '../facts-builder'
import { leadFinish } from './finish-rows'

const YEAR_H = 8760

describe('growth of compound', () => {
  // The fit's own check values: k = 0.1068 µm²/h at 398 K, 10 µm in 1000 h, 53 µm in three years.
  test('gives the published values at 125 °C', () => {
    const k = growthConstant(GROWTH_LAWS.fitted, 398 - 273.15)
    expect(k).toBeCloseTo(0.1068, 4)
    expect(compoundUm(k, 1000, 0)).toBeCloseTo(10.33, 2)
    expect(compoundUm(k, 3 * YEAR_H, 0)).toBeCloseTo(52.98, 1)
  })
  // Computed from the fit: 7.88 µm in 20 years at 25 °C; 4.3 µm in two years at 40 °C.
  test.each([
    [25, 20, 7.88],
    [20, 5, 3.24],
    [40, 2, 4.3],
    [60, 10, 18.41],
  ])('%s °C for %s years: %s µm', (temperatureC, years, um) => {
    const k = growthConstant(GROWTH_LAWS.fitted, temperatureC)
    expect(compoundUm(k, years * YEAR_H, 0)).toBeCloseTo(um, 1)
  })
  // Copper Development Association, connector design guide: about 25 µin (0.635 µm) in four weeks; by the fit 0.49 µm.
  test('the peaks of the layer measured at room temperature are the fast edge of the band at 25 °C', () => {
    const hours = 4 * 7 * 24
    const band = growthBand(25)
    expect(compoundUm(band.fitted, hours, 0)).toBeCloseTo(0.488, 2)
    expect(compoundUm(growthConstant(GROWTH_LAWS['electroplated-tin'], 25), hours, 0)).toBeCloseTo(0.635, 9)
    expect(compoundUm(band.fastest, hours, 0)).toBeCloseTo(1.5 * 0.635, 9)
    expect(compoundUm(band.slowest, hours, 0)).toBeLessThan(0.488)
  })
  // Metals and Materials International 9 (2003), 193–199, abstract: 9 µm in all after 60 days at 150 °C.
  test('the aged layer is the one that was measured at 150 °C', () => {
    expect(compoundUm(growthConstant(GROWTH_LAWS.aged, 150), 60 * 24, 0)).toBeCloseTo(9, 9)
  })
  // The same abstract: 65.4 kJ/mol. By hand at 40 °C: 6.0003·10⁻⁴ · exp(65 400/8.31446 · (1/298.15 − 1/313.15)) = 2.12·10⁻³ µm²/h.
  test('a warm store is judged by the greater of the two published energies, a cold one by the lesser', () => {
    expect(growthConstant(GROWTH_LAWS['electroplated-tin-warm'], 40)).toBeCloseTo(2.123e-3, 5)
    expect(growthBand(40).fastest / growthConstant(GROWTH_LAWS['electroplated-tin-warm'], 40)).toBeCloseTo(
      2.25,
    )
    expect(growthBand(10).fastest / growthConstant(GROWTH_LAWS['electroplated-tin'], 10)).toBeCloseTo(2.25)
  })
  test('no set without an author decides, however fast it grows', () => {
    const unattributed = Object.values(GROWTH_LAWS).filter(({ attributed }) => !attributed)
    expect(unattributed).toEqual([GROWTH_LAWS.fitted])
    expect(GROWTH_LAWS.fitted.source.how).toBe('from memory')
  })
  test('the highest published energy meets the aged layers at 120 °C and hardly grows at 25 °C', () => {
    const highest = GROWTH_LAWS['highest-energy']
    expect(growthConstant(highest, 120) / growthConstant(GROWTH_LAWS.aged, 120)).toBeCloseTo(1, 9)
    expect(growthBand(25).slowest).toBe(growthConstant(highest, 25))
  })
  // Computed from the fit: years until all tin is taken up, Cu₆Sn₅ only.
  test.each([
    [5, 25, 16.82],
    [1, 30, 0.46],
    [10, 40, 22.62],
    [2, 20, 3.97],
  ])('%s µm of tin at %s °C is used up in %s years', (coatingUm, temperatureC, years) => {
    const k = growthConstant(GROWTH_LAWS.fitted, temperatureC)
    const hours = hoursUntilLeft({ coatingUm, tinShare: 1, firstUm: 0 }, 0, k)
    expect(hours / YEAR_H / years).toBeCloseTo(1, 1)
  })
  test('one µm of Cu₆Sn₅ takes up 0.692 µm of tin', () => {
    const tinByMass = (5 * 118.71) / (5 * 118.71 + 6 * 63.546)
    expect((tinByMass * DENSITY_GCM3.cu6sn5) / DENSITY_GCM3.tin).toBeCloseTo(TIN_PER_CU6SN5.value, 3)
  })
  test('Sn60Pb40 is 70 % tin by volume', () => {
    expect(tinVolumeShare(60)).toBeCloseTo(0.7, 2)
  })
  test('what is needed, what is left and how long it lasts agree', () => {
    const rest = { tinShare: 0.7, firstUm: 1 }
    const needed = coatingNeededUm(rest, 1.5, 1e-3, 9000)
    const coat = { ...rest, coatingUm: needed }
    expect(coatingLeftUm(coat, compoundUm(1e-3, 9000, 1))).toBeCloseTo(1.5, 9)
    expect(hoursUntilLeft(coat, 1.5, 1e-3)).toBeCloseTo(9000, 6)
  })
  test('a coat too thin from the start lasts no time', () => {
    expect(hoursUntilLeft({ coatingUm: 1, tinShare: 1, firstUm: 1 }, 1, 1e-3)).toBe(0)
  })
})

interface Case {
  readonly finish?: BoardFinishKey
  readonly um?: number
  readonly months?: number
  readonly leadMonths?: number
  readonly temperatureC?: number
  readonly lead?: LeadFinish
  readonly more?: readonly SetValue[]
}
const stored = ({
  finish = 'tin-plated',
  um = 8,
  months = 12,
  leadMonths = 12,
  temperatureC = 25,
  lead = leadFinish({ coatingUm: 8 }),
  more = [],
}: Case) => ({
  values: [
    set(boardFinish, finish),
    set(boardFinishMin, um),
    set(leadFinishes, [lead]),
    set(boardStorageMonths, months),
    set(leadStorageMonths, leadMonths),
    set(storageTemperature, temperatureC),
    ...more,
  ],
})

describe('storage life', () => {
  test('8 µm for a year at 25 °C meets, by the fastest growth', () => {
    const finding = findingOf(storageLife, stored({}))
    expect(finding.verdict).toBe('meets')
    // k = 1.5² · 0.635²/672 = 1.350·10⁻³; x = √(k · 8766) = 3.440; 8 − 0.692 · 3.440 = 5.62 (by hand).
    expect(finding.parts?.[0]?.margin?.found).toBeCloseTo(5.62, 2)
  })
  test('a band is told, never one point', () => {
    expect(findingOf(storageLife, stored({})).parts?.[0]?.found).toMatch(
      /[\d.]+ µm to [\d.]+ µm are left .* [\d.]+ months to (more than 50 years|[\d.]+ months)/,
    )
  })
  test('warmth is worse than time', () => {
    expect(findingOf(storageLife, stored({ um: 5, months: 12 })).verdict).toBe('meets')
    expect(findingOf(storageLife, stored({ um: 5, months: 12, temperatureC: 45 })).verdict).toBe('fails')
  })
  test('the thicker coating of the remedy meets, on the board and on a lead', () => {
    const board = factsWith(stored({ um: 5, months: 30 }))
    expect(afterRemedy(storageLife, board).verdict).toBe('meets')
    const lead = factsWith(stored({ lead: leadFinish({ coatingUm: 5 }), leadMonths: 24 }))
    expect(
      findingOf(storageLife, stored({ lead: leadFinish({ coatingUm: 5 }), leadMonths: 24 })).verdict,
    ).toBe('fails')
    expect(afterCellRemedy(storageLife, lead).verdict).toBe('meets')
  })
  test('where no coating inside the window lasts, the shorter storage of the remedy meets', () => {
    const facts = factsWith(stored({ um: 8, months: 120 }))
    expect(afterRemedy(storageLife, facts).verdict).toBe('meets')
  })
  test('the cooler store that the remedy names is cool enough', () => {
    const warm = stored({ um: 5, months: 12, temperatureC: 45 })
    const degrees = Number(/store at (\d+) °C/.exec(findingOf(storageLife, warm).remedy?.message ?? '')?.[1])
    expect(findingOf(storageLife, stored({ um: 5, months: 12, temperatureC: degrees })).verdict).toBe('meets')
  })
  test('over nickel the copper law is kept and said to be on the safe side', () => {
    const finding = findingOf(storageLife, stored({ more: [set(boardNickel, 3)] }))
    expect(finding.notes?.join(' ')).toContain('on the safe side')
  })
  test('immersion tin goes by its shelf life', () => {
    const finding = findingOf(storageLife, stored({ finish: 'immersion-tin', um: 1 }))
    expect(finding.parts?.map((part) => part.subject)).toEqual(['R1'])
    expect(finding.notes?.join(' ')).toContain('Immersion tin')
  })
  test('gold and preserved copper hold no tin', () => {
    const lead = leadFinish({ coating: 'gold', coatingUm: 0.1, coatingMostUm: 0.2 })
    expect(findingOf(storageLife, stored({ finish: 'osp', um: 0.3, lead })).verdict).toBe('not applicable')
  })
})
