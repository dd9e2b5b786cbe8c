import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { COPPER_FOILS, type CopperFoilKey } from '@/shared/materials/copper-foils'
import { minCopperUm } from '@/shared/plan/board-copper'
import { conductors, type ConductorRow } from '@/shared/plan/parameters/conductors'
import { boardFinishMin } from '@/shared/plan/parameters/finishes'
import { boardBuild, copperFoil, copperLayers } from '@/shared/plan/parameters/laminate'
import { barrelPlating, leadHoles } from '@/shared/plan/parameters/lead-holes'
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
    set(barrelPlating, 25),
    set(boardFinishMin, 5),
    set(conductors, rows),
    ...more,
  ],
})

describe('the least copper of a finished layer', () => {
  // IPC-6012, after processing: inner layers 11.4, 24.9 and 55.7 µm of ½, 1 and 2 oz; outer ones with 20 µm plated
  // (class 2) 33.4, 47.9 and 78.7, with 25 µm (class 3) 38.4, 52.9 and 83.7 (secondary copy: NCAB Group, “How much
  // finished copper can be expected?”).
  test.each([
    ['18', 11.4, 33.4, 38.4],
    ['35', 24.9, 47.9, 52.9],
    ['70', 55.7, 78.7, 83.7],
  ] as const)('of %s µm is %s µm inside, %s and %s µm outside', (foil, inside, class2, class3) => {
    const copper = (platedUm: number) => ({ foil, how: 'subtractive', platedUm }) as const
    expect(minCopperUm('internal', copper(25))).toBeCloseTo(inside, 9)
    expect(minCopperUm('external', copper(20))).toBeCloseTo(class2, 9)
    expect(minCopperUm('external', copper(25))).toBeCloseTo(class3, 9)
  })
  test('lies below its name', () => {
    for (const [key, foil] of Object.entries(COPPER_FOILS)) expect(foil.boughtUm).toBeLessThan(Number(key))
  })
})

describe('layers and copper of the board', () => {
  // Outside 27.9 + (25 − 5) = 47.9 µm, inside 24.9 µm (by hand); a twentieth of it is the guard band.
  test.each([
    ['external', 45, 'meets'],
    ['external', 46, 'marginal'],
    ['external', 48, 'fails'],
    ['internal', 23, 'meets'],
    ['internal', 24, 'marginal'],
    ['internal', 25, 'fails'],
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
