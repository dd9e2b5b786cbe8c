import { describe, expect, test } from 'vitest'
import { LAND_EDITIONS } from '@/shared/materials/land-allowances'
import { minLandMm, remainingRingMm } from '@/shared/physics/land'
import { copperLayers } from '@/shared/plan/parameters/laminate'
import { ringExternalMin } from '@/shared/plan/limits/lead-holes'
import {
  barrelPlating,
  landEdition,
  leadHoles,
  producibilityLevel,
  type LeadHole,
} from '@/shared/plan/parameters/lead-holes'
import { productClass } from '@/shared/plan/parameters/programme'
import { annularRing } from '@/shared/rules/specification/annular-ring'
import { afterCellRemedy } from '../cell-remedy'
import { factsWith, findingOf, requirement, set, type SetValue } from '../facts-builder'
import { leadHole } from './lead-hole-rows'

describe('the least land', () => {
  // Textbook example after IPC-2221B: drill 50 mil, plating 1 mil, level A, ring 2 mil, allowance
  // 16 mil: (50 − 2) + 2·2 + 16 = 68 mil. The standard's metric allowance of 0.4 mm is 15.75 mil.
  test('gives the published 68 mil within the rounding of mils', () => {
    const mil = 0.0254
    const hole = { minMm: 48 * mil, maxMm: 48 * mil }
    const land = minLandMm({ hole, level: 'A', edition: LAND_EDITIONS['ipc-2221'], ringMm: 2 * mil })
    expect(Math.abs(land / mil - 68)).toBeLessThan(0.3)
  })
  // MIL-STD-275: at least 0.034 in (0.864 mm) over the largest hole.
  test('gives MIL-STD-275’s 0.864 mm over the hole', () => {
    const hole = { minMm: 0.9, maxMm: 1 }
    const land = minLandMm({ hole, level: 'C', edition: LAND_EDITIONS['mil-std-275'], ringMm: 0.05 })
    expect(land).toBeCloseTo(1.864, 9)
  })
  test('leaves exactly the ring it was made for', () => {
    const question = {
      hole: { minMm: 0.9, maxMm: 1 },
      level: 'B',
      edition: LAND_EDITIONS['ipc-7251'],
    } as const
    expect(remainingRingMm(minLandMm({ ...question, ringMm: 0.05 }), question)).toBeCloseTo(0.05, 12)
  })
})

const board = (rows: readonly LeadHole[], ...more: SetValue[]) => ({
  values: [
    set(leadHoles, rows),
    set(barrelPlating, 25),
    set(producibilityLevel, 'B'),
    set(productClass, '2'),
    set(copperLayers, 2),
    ...more,
  ],
})

describe('annular ring', () => {
  test('by IPC-2221B: 1.9 − 1.2 − 0.25 leaves 0.225 mm a side', () => {
    const finding = findingOf(annularRing, board([leadHole()], set(landEdition, 'ipc-2221')))
    expect(finding.verdict).toBe('meets')
    expect(finding.margin?.found).toBeCloseTo(0.225, 9)
  })
  test('without an edition the strictest in use decides', () => {
    // IPC-7251 style: 1.9 − 1.1 − 0.5 leaves 0.15 mm.
    const finding = findingOf(annularRing, board([leadHole()]))
    expect(finding.margin?.found).toBeCloseTo(0.15, 9)
    expect(finding.notes?.[0]).toContain('No edition is chosen')
  })
  test('exactly on the limit is inside, and marginal', () => {
    // 1.2 + 0.25 + 2 · 0.05 = 1.55
    const finding = findingOf(annularRing, board([leadHole({ landMm: 1.55 })], set(landEdition, 'ipc-2221')))
    expect(finding.margin?.found).toBe(0.05)
    expect(finding.verdict).toBe('marginal')
  })
  test('a land too small fails, and the land of the remedy meets', () => {
    const facts = factsWith(board([leadHole({ landMm: 1.5 })]))
    expect(findingOf(annularRing, board([leadHole({ landMm: 1.5 })])).verdict).toBe('fails')
    expect(afterCellRemedy(annularRing, facts).verdict).toBe('meets')
  })
  test('an unplated hole asks a wider ring', () => {
    const rows = [leadHole({ plated: false, landMm: 1.7 })]
    const finding = findingOf(annularRing, board(rows, set(landEdition, 'ipc-2221')))
    expect(finding.margin).toMatchObject({ limit: 0.15 })
    expect(finding.verdict).toBe('fails')
    expect(
      findingOf(annularRing, board([leadHole({ landMm: 1.7 })], set(landEdition, 'ipc-2221'))).verdict,
    ).toBe('meets')
  })
  // IPC-2221, 9.2.2: on inner layers from the drilled hole. Finished 1.15 with 25 µm a wall is drilled 1.2;
  // level B allows 0.25 for fabrication: (1.9 − 1.2 − 0.25)/2 = 0.225 (by hand). Table 9-2: 0.03 mm (from memory).
  describe('on inner layers', () => {
    const inside = (over: Partial<LeadHole>, layers = 4) =>
      board([leadHole(over)], set(landEdition, 'ipc-2221'), set(copperLayers, layers))
    test('is measured from the drilled hole', () => {
      const part = findingOf(annularRing, inside({})).parts?.find(({ about }) => about?.layer === 'inner')
      expect(part?.margin).toMatchObject({ limit: 0.03, found: 0.225 })
    })
    test.each([
      [1.55, 'meets'],
      [1.52, 'marginal'],
      [1.5, 'fails'],
    ] as const)('a land of %s mm there %s', (innerLandMm, verdict) => {
      expect(findingOf(annularRing, inside({ innerLandMm })).verdict).toBe(verdict)
    })
    test('the land of the remedy meets', () => {
      expect(afterCellRemedy(annularRing, factsWith(inside({ innerLandMm: 1.4 }))).verdict).toBe('meets')
    })
    test('a board of two layers has none, nor has an unplated hole', () => {
      expect(findingOf(annularRing, inside({ innerLandMm: 1.4 }, 2)).verdict).toBe('meets')
      expect(findingOf(annularRing, inside({ innerLandMm: 1.4, plated: false })).parts).toHaveLength(1)
    })
  })
  test('a customer’s wider ring rules', () => {
    const finding = findingOf(annularRing, {
      ...board([leadHole()]),
      requirements: [requirement(ringExternalMin, 0.2)],
    })
    expect(finding.verdict).toBe('fails')
    expect(finding.limit).toContain('CS-100 issue 2')
  })
  test('says what a delivered board of its class may show', () => {
    expect(findingOf(annularRing, board([leadHole()])).notes?.join(' ')).toContain('90° of breakout')
  })
})
