import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { COPPER_FOILS, leastFoilUm, type CopperFoilKey } from '@/shared/materials/copper-foils'
import { conductors, type ConductorRow } from '@/shared/plan/parameters/conductors'
import { boardFinishLeast } from '@/shared/plan/parameters/finishes'
import { boardBuild, copperFoil, copperLayers } from '@/shared/plan/parameters/laminate'
import { holeWall, leadHoles } from '@/shared/plan/parameters/lead-holes'
import { VERDICTS } from '@/shared/rules/finding'
import { boardBuildRule } from '@/shared/rules/specification/board-build'
import { afterCellRemedy } from '../cell-remedy'
import { factsWith, findingOf, set, type SetValue } from '../facts-builder'
import { leadHole } from './lead-hole-rows'

const conductor = (over: Partial<ConductorRow> = {}): ConductorRow => ({
  net: 'SUPPLY',
  layer: 'external',
  widthMm: 1,
  copperUm: 35,
  currentA: 1,
  lengthMm: 100,
  dropMostMv: undefined,
  ...over,
})

const board = (rows: readonly ConductorRow[], ...more: SetValue[]) => ({
  values: [
    set(copperFoil, '35'),
    set(copperLayers, 4),
    set(leadHoles, [leadHole()]),
    set(holeWall, 25),
    set(boardFinishLeast, 5),
    set(conductors, rows),
    ...more,
  ],
})

describe('the least copper of a foil', () => {
  // Foil data (secondary copy): nominal 35 µm 285 ± 10 g/m², nominal 18 µm 153 ± 7 g/m²; copper 8.96 g/cm³.
  // By hand: 275/8.96 = 30.69 µm, 146/8.96 = 16.29 µm.
  test.each([
    ['35', 30.69],
    ['18', 16.29],
  ] as const)('of %s µm is %s µm', (key, um) => {
    expect(leastFoilUm(COPPER_FOILS[key])).toBeCloseTo(um, 2)
  })
  test('lies below its name', () => {
    for (const [key, foil] of Object.entries(COPPER_FOILS))
      expect(leastFoilUm(foil)).toBeLessThan(Number(key))
  })
})

describe('layers and copper of the board', () => {
  // Outside 30.69 + (25 − 5) = 50.69 µm, inside 30.69 µm (by hand); a twentieth of it is the guard band.
  test.each([
    ['external', 48, 'meets'],
    ['external', 48.5, 'marginal'],
    ['external', 51, 'fails'],
    ['internal', 29, 'meets'],
    ['internal', 30, 'marginal'],
    ['internal', 35, 'fails'],
  ] as const)('an %s conductor that counts on %s µm %s', (layer, copperUm, verdict) => {
    expect(findingOf(boardBuildRule, board([conductor({ layer, copperUm })])).verdict).toBe(verdict)
  })
  test('the copper of the remedy meets', () => {
    const facts = factsWith(board([conductor(), conductor({ net: 'RELAY', layer: 'internal' })]))
    expect(afterCellRemedy(boardBuildRule, facts).verdict).toBe('meets')
  })
  test('nothing is laid on outside where no hole is plated', () => {
    const facts = board([conductor()], set(leadHoles, [leadHole({ plated: false })]))
    expect(findingOf(boardBuildRule, facts).verdict).toBe('fails')
  })
  test('built up without current, the outer layers have no foil', () => {
    const additive = set(boardBuild, 'additive')
    expect(findingOf(boardBuildRule, board([conductor({ copperUm: 19 })], additive)).verdict).toBe('meets')
    expect(findingOf(boardBuildRule, board([conductor({ copperUm: 25 })], additive)).verdict).toBe('fails')
  })
  test('a single-sided board has nothing for a barrel to join', () => {
    const finding = findingOf(boardBuildRule, board([conductor()], set(copperLayers, 1)))
    expect(finding.verdict).toBe('fails')
    expect(finding.remedy).toMatchObject({ parameter: copperLayers.key, value: 2 })
  })
  test('a board of two layers has no inside for a conductor', () => {
    const rows = [conductor({ layer: 'internal', copperUm: 20 })]
    expect(findingOf(boardBuildRule, board(rows, set(copperLayers, 2))).found).toContain('lies inside')
  })
  test('heavier foil never judges a conductor worse', () => {
    const foils = Object.keys(COPPER_FOILS) as CopperFoilKey[]
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 150, noNaN: true }),
        fc.constantFrom('external' as const, 'internal' as const),
        (copperUm, layer) => {
          const ranks = foils.map((foil) =>
            VERDICTS.indexOf(
              findingOf(boardBuildRule, board([conductor({ copperUm, layer })], set(copperFoil, foil)))
                .verdict,
            ),
          )
          expect(ranks).toEqual(ranks.toSorted((a, b) => b - a))
        },
      ),
    )
  })
})
