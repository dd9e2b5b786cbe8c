import { describe, expect, test } from 'vitest'
import { ALLOYS, type Alloy } from '@/shared/materials/alloys'
import { BOARD_FINISHES, type BoardFinish } from '@/shared/materials/board-finishes'
import {
  SPACING_CATEGORIES,
  SPACING_TABLES,
  type SpacingCategory,
} from '@/shared/materials/conductor-spacings'
import { FLUXES } from '@/shared/materials/fluxes'
import { HOLE_ALLOWANCES } from '@/shared/materials/hole-allowances'
import { LAMINATES, type Laminate } from '@/shared/materials/laminates'
import { LAND_EDITIONS } from '@/shared/materials/land-allowances'
import { LEAD_COATINGS } from '@/shared/materials/lead-finishes'
import { DRILL_SERIES } from '@/shared/materials/preferred-drills'

const rising = (numbers: readonly number[], strictly = true): boolean =>
  numbers.every(
    (number, index) =>
      index === 0 || (strictly ? number > numbers[index - 1]! : number >= numbers[index - 1]!),
  )

describe('spacing tables', () => {
  const categories = Object.keys(SPACING_CATEGORIES) as SpacingCategory[]
  test.each(Object.entries(SPACING_TABLES))(
    '%s: voltages rise, spacings never shrink, the last row ends at 500 V',
    (_, table) => {
      expect(rising(table.rows.map(({ upToV }) => upToV))).toBe(true)
      expect(table.rows.at(-1)?.upToV).toBe(500)
      for (const category of categories) {
        expect(
          rising(
            table.rows.map((row) => row[category]),
            false,
          ),
          category,
        ).toBe(true)
        expect(table.perVoltMm[category]).toBeGreaterThan(0)
      }
    },
  )
  test('columns as printed: IPC-2221 B2, B3 and A6; IPC-D-275 B3', () => {
    const column = (edition: keyof typeof SPACING_TABLES, category: SpacingCategory) =>
      SPACING_TABLES[edition].rows.map((row) => row[category])
    expect(column('ipc-2221', 'B2')).toEqual([0.1, 0.1, 0.6, 0.6, 0.6, 1.25, 1.25, 1.25, 2.5])
    expect(column('ipc-2221', 'B3')).toEqual([0.1, 0.1, 0.6, 1.5, 3.2, 3.2, 6.4, 12.5, 12.5])
    expect(column('ipc-2221', 'A6')).toEqual([0.13, 0.25, 0.4, 0.5, 0.8, 0.8, 0.8, 0.8, 1.5])
    expect(column('ipc-2221', 'A7')).toEqual([0.13, 0.13, 0.13, 0.13, 0.4, 0.4, 0.4, 0.8, 0.8])
    expect(column('ipc-d-275', 'B3')).toEqual([0.64, 0.64, 0.64, 1.5, 3.18, 3.18, 6.4, 12.7, 12.7])
  })
})

describe('holes and lands', () => {
  test('IPC-2222 allowances by level', () => {
    expect(Object.values(HOLE_ALLOWANCES).map((row) => [row.minOverMaxMm, row.maxOverMinMm])).toEqual([
      [0.25, 0.7],
      [0.2, 0.7],
      [0.15, 0.6],
    ])
  })
  test('a harder level never asks more allowance', () => {
    for (const { allowanceMm } of Object.values(LAND_EDITIONS)) {
      expect(rising([allowanceMm.C, allowanceMm.B, allowanceMm.A], false)).toBe(true)
    }
  })
  test.each(Object.entries(DRILL_SERIES))('drill series %s rises', (_, { sizesMm }) => {
    expect(rising(sizesMm)).toBe(true)
    expect(sizesMm[0]).toBeGreaterThan(0)
  })
  // ASME B94.11M (from memory): number 60 is 0.040 in, number 55 0.052 in, number 80 0.0135 in.
  test('number drills in millimetres', () => {
    expect(DRILL_SERIES.number.sizesMm).toHaveLength(41)
    expect(DRILL_SERIES.number.sizesMm[0]).toBeCloseTo(0.3429, 4)
    expect(DRILL_SERIES.number.sizesMm[20]).toBeCloseTo(1.016, 4)
    expect(DRILL_SERIES.number.sizesMm[25]).toBeCloseTo(1.3208, 4)
  })
})

describe('laminates', () => {
  const all = Object.entries(LAMINATES) as [string, Laminate][]
  test.each(all)(
    '%s: no longer float at a higher temperature, worked below its glass transition',
    (_, grade) => {
      expect(rising(grade.solderFloat.map(({ temperatureC }) => temperatureC))).toBe(true)
      expect(
        rising(
          grade.solderFloat.map(({ seconds }) => -seconds),
          false,
        ),
      ).toBe(true)
      expect(grade.maxOperatingC).toBeLessThanOrEqual(grade.glassTransitionC)
      if (grade.throughExpansionPpmK) {
        expect(grade.throughExpansionPpmK.above).toBeGreaterThan(grade.throughExpansionPpmK.below)
      }
    },
  )
  test('paper phenolic carries no plated holes, woven glass does', () => {
    for (const [, { base, platedHoles }] of all) {
      if (base === 'paper and phenolic') expect(platedHoles).toBe('no')
      if (base === 'woven glass') expect(platedHoles).toBe('yes')
    }
  })
  // Sources give 105 and 130 °C to FR-1 and FR-2 either way round: the lower holds for both.
  test('FR-1 and FR-2 take the lower of the swapped ratings', () => {
    expect([LAMINATES['fr-1'].maxOperatingC, LAMINATES['fr-2'].maxOperatingC]).toEqual([105, 105])
  })
})

describe('alloys, finishes and fluxes', () => {
  const alloys = Object.entries(ALLOYS) as [string, Alloy][]
  test.each(alloys)('%s: solidus not above liquidus, family as its lead', (_, alloy) => {
    expect(alloy.solidusC).toBeLessThanOrEqual(alloy.liquidusC)
    expect(alloy.family).toBe(alloy.leadPct > 0.1 ? 'tin-lead' : 'lead-free')
    expect(alloy.densityGcm3).toBeGreaterThan(7)
    expect(alloy.densityGcm3).toBeLessThan(9)
  })
  // Compiled alloy data: Sn60Pb40 183/191 °C, 8.5 g/cm³; Sn96.5Ag3Cu0.5 217/220 °C, 7.38; Sn99.3Cu0.7 227 °C.
  test('values as compiled', () => {
    expect(ALLOYS.sn60pb40).toMatchObject({ solidusC: 183, liquidusC: 191, densityGcm3: 8.5 })
    expect(ALLOYS.sac305).toMatchObject({ solidusC: 217, liquidusC: 220, densityGcm3: 7.38 })
    expect(ALLOYS['sn99.3cu0.7']).toMatchObject({ solidusC: 227, liquidusC: 227 })
  })
  test('board finishes: windows and shelf lives run from least to most, lead only where the coating is tin-lead', () => {
    for (const finish of Object.values(BOARD_FINISHES) as BoardFinish[]) {
      if (finish.window?.maxUm !== undefined) expect(finish.window.minUm).toBeLessThan(finish.window.maxUm)
      if (finish.shelfMonths) expect(finish.shelfMonths.min).toBeLessThanOrEqual(finish.shelfMonths.max)
      expect(finish.leadPct > 0).toBe(finish.coating === 'tin-lead')
      expect(finish.pureTin).toBe(finish.coating === 'tin')
    }
  })
  // MIL-PRF-28776, 3.31: at least 3 % of lead keeps whiskers away.
  test('lead coatings with lead do not count as whisker-prone', () => {
    for (const coating of Object.values(LEAD_COATINGS)) {
      if (coating.leadPct >= 3) expect(coating.whiskers).toBe('no')
    }
  })
  test('no flux of high activity may leave its residue; every low-activity rosin may', () => {
    for (const flux of Object.values(FLUXES)) {
      if (flux.activity === 'high') expect(flux.residueMayStay).toBe('no')
      if (flux.activity === 'low' && flux.base === 'rosin') expect(flux.residueMayStay).toBe('yes')
    }
  })
})

test('every row of every table names its source and how it was come by', () => {
  const hows = ['published', 'common practice, no published source', 'from memory', 'computed']
  const tables = [SPACING_TABLES, HOLE_ALLOWANCES, LAND_EDITIONS, DRILL_SERIES, LAMINATES, ALLOYS, FLUXES]
  for (const row of tables.flatMap((table) => Object.values(table))) {
    expect(row.source.cite.length).toBeGreaterThan(10)
    expect(hows).toContain(row.source.how)
  }
})
