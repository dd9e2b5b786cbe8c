import { describe, expect, test } from 'vitest'
import { radialClearanceMin, radialClearanceMax } from '@/shared/plan/limits/lead-holes'
import {
  clearanceBasis,
  drillSeries,
  barrelPlating,
  leadHoles,
  type LeadHole,
} from '@/shared/plan/parameters/lead-holes'
import { leadClearance } from '@/shared/rules/specification/lead-clearance'
import { afterCellRemedy, isCellRemedy } from '../cell-remedy'
import { factsWith, findingOf, requirement, set, unchecked, type SetValue } from '../facts-builder'
import { leadHole } from './lead-hole-rows'

const board = (rows: readonly LeadHole[], ...more: SetValue[]) => ({
  values: [set(leadHoles, rows), set(barrelPlating, 25), set(drillSeries, 'metric-0.05'), ...more],
})

describe('lead clearance', () => {
  test('1.15 ± 0.05 over 0.8 ± 0.025 lies inside 0.10 to 0.25 mm at worst', () => {
    const finding = findingOf(leadClearance, board([leadHole()]))
    expect(finding.verdict).toBe('meets')
    expect(finding.margin).toMatchObject({ found: 0.1375, limit: 0.1 })
    expect(finding.found).toContain('0.1375 to 0.2125 mm at worst')
  })

  test('exactly on the limit is inside, and marginal', () => {
    // (1.1 − 0.05 − 0.825)/2 = 0.1125; with hole 1.075: (1.025 − 0.825)/2 = 0.1
    const finding = findingOf(leadClearance, board([leadHole({ holeMm: 1.075 })]))
    expect(finding.margin?.found).toBe(0.1)
    expect(finding.verdict).toBe('marginal')
  })

  test('a hair below the limit fails', () => {
    expect(findingOf(leadClearance, board([leadHole({ holeMm: 1.0748 })])).verdict).toBe('fails')
  })

  test('plating is taken off a drilled hole', () => {
    const drilled = findingOf(leadClearance, board([leadHole({ holeGiven: 'drilled', holeMm: 1.2 })]))
    const finished = findingOf(leadClearance, board([leadHole({ holeGiven: 'finished', holeMm: 1.15 })]))
    expect(drilled.margin).toEqual(finished.margin)
  })

  test('an unplated hole loses nothing to plating', () => {
    const finding = findingOf(
      leadClearance,
      board([leadHole({ holeGiven: 'drilled', holeMm: 1.15, plated: false })]),
    )
    expect(finding.margin?.found).toBe(0.1375)
  })

  test.each(['finished', 'drilled'] as const)(
    'the remedy for a %s hole names a drill that meets',
    (given) => {
      const facts = factsWith(board([leadHole({ holeMm: 0.95, holeGiven: given })]))
      const after = afterCellRemedy(leadClearance, facts)
      expect(after.verdict).toBe('meets')
    },
  )

  test('a tolerance that no hole serves is answered with one that does', () => {
    const rows = [leadHole({ holeToleranceMm: 0.15 })]
    const finding = findingOf(leadClearance, board(rows))
    expect(finding.verdict).toBe('fails')
    expect(isCellRemedy(finding.remedy)).toBe(false)
    // Window 0.30 less the lead's spread 0.05 leaves ± 0.125 for the hole, centred on 1.15.
    expect(finding.remedy?.message).toContain('± 0.125 mm')
    const after = findingOf(leadClearance, board([leadHole({ holeToleranceMm: 0.125, holeMm: 1.15 })]))
    expect(after.verdict).not.toBe('fails')
  })

  test('a lead that varies by more than the window asks for a closer lead', () => {
    const finding = findingOf(leadClearance, board([leadHole({ leadToleranceMm: 0.2 })]))
    expect(finding.remedy?.message).toContain('ask for a closer lead')
  })

  test('judged statistically, the same spread may pass', () => {
    const rows = [leadHole({ holeToleranceMm: 0.15, leadToleranceMm: 0.1, holeMm: 1.15 })]
    expect(findingOf(leadClearance, board(rows)).verdict).toBe('fails')
    const finding = findingOf(leadClearance, board(rows, set(clearanceBasis, 'statistical')))
    // s = √(0.05² + 0.0333²)/2 = 0.0300463; the window's ± 0.075 is 2.49615 s: 12 555 per million outside (erfc by an independent program).
    expect(finding.margin?.found).toBeCloseTo(12554.9186, 3)
    expect(finding.verdict).toBe('fails')
    const closer = [leadHole({ holeToleranceMm: 0.12, leadToleranceMm: 0.06, holeMm: 1.15 })]
    expect(findingOf(leadClearance, board(closer)).verdict).toBe('fails')
    expect(findingOf(leadClearance, board(closer, set(clearanceBasis, 'statistical'))).verdict).toBe('meets')
  })

  test('a lead off its place must still enter', () => {
    const finding = findingOf(leadClearance, board([leadHole({ leadPositionMm: 0.2 })]))
    expect(finding.verdict).toBe('fails')
    expect(finding.found).toContain('off its place')
    const after = afterCellRemedy(leadClearance, factsWith(board([leadHole({ leadPositionMm: 0.15 })])))
    expect(after.verdict).not.toBe('fails')
  })

  test('a flat lead is thin: the hole may not be much wider than its thickness', () => {
    // MIL-STD-275: nominal hole at most 0.711 mm over the thickness.
    const flat = leadHole({ leadShape: 'flat', leadMm: 1, leadThicknessMm: 0.2, holeMm: 1.35, landMm: 2.2 })
    const finding = findingOf(leadClearance, board([flat]))
    expect(finding.verdict).toBe('fails')
    expect(finding.found).toContain('wider than the flat lead is thick')
  })

  test('a rectangular lead without thickness cannot be judged, and says so', () => {
    const finding = findingOf(leadClearance, board([leadHole({ leadShape: 'rectangular' })]))
    expect(finding.verdict).toBe('undetermined')
    expect(finding.missing?.[0]).toContain('thickness of the lead is missing')
  })

  test('one part for each row, the worst deciding', () => {
    const finding = findingOf(
      leadClearance,
      board([leadHole(), leadHole({ component: 'T1', holeMm: 0.9 }), leadHole({ component: 'C3' })]),
    )
    expect(finding.parts?.map((part) => part.verdict)).toEqual(['meets', 'fails', 'meets'])
    expect(finding.found).toMatch(/^T1: .* Of 3 joint types, 1 failing\.$/)
  })

  test('without a hole table it is undetermined and says what is missing', () => {
    const finding = findingOf(leadClearance, { values: [set(barrelPlating, 25)] })
    expect(finding.verdict).toBe('undetermined')
    expect(finding.missing).toEqual(['Holes and leads'])
  })

  test('a number that is none is never a pass', () => {
    const rows = [leadHole({ holeMm: Number.NaN })]
    expect(
      findingOf(leadClearance, { values: [unchecked(leadHoles, rows), set(barrelPlating, 25)] }).verdict,
    ).toBe('undetermined')
  })

  test('the document that sets the window is named', () => {
    const finding = findingOf(leadClearance, {
      ...board([leadHole()]),
      requirements: [requirement(radialClearanceMin, 0.15)],
    })
    expect(finding.verdict).toBe('fails')
    expect(finding.limit).toContain('CS-100 issue 2')
  })

  test('layers that leave no window cannot be judged', () => {
    const finding = findingOf(leadClearance, {
      ...board([leadHole()]),
      requirements: [requirement(radialClearanceMin, 0.2), requirement(radialClearanceMax, 0.15)],
    })
    expect(finding.verdict).toBe('undetermined')
  })
})
