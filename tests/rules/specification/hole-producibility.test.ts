import { describe, expect, test } from 'vitest'
import {
  drillSeries,
  barrelPlating,
  leadHoles,
  producibilityLevel,
  type LeadHole,
} from '@/shared/plan/parameters/lead-holes'
import { judge } from '@/shared/rules/rule'
import { holeProducibility } from '@/shared/rules/specification/hole-producibility'
import { leadClearance } from '@/shared/rules/specification/lead-clearance'
import { afterCellRemedy, isCellRemedy, withCell } from '../cell-remedy'
import { factsWith, findingOf, set } from '../facts-builder'
import { leadHole } from './lead-hole-rows'

const board = (rows: readonly LeadHole[], level: 'A' | 'B' | 'C' = 'B') => ({
  values: [
    set(leadHoles, rows),
    set(barrelPlating, 25),
    set(producibilityLevel, level),
    set(drillSeries, 'metric-0.05'),
  ],
})

describe('hole by producibility level', () => {
  // IPC-2222B, level B, lead 0.9 to 1.1 mm: hole 1.3 to 1.6 mm.
  const lead = { leadMm: 1, leadToleranceMm: 0.1 }
  test.each([
    [1.45, 0.05, 'meets'],
    [1.45, 0.15, 'marginal'],
    [1.4, 0.11, 'fails'],
    [1.5, 0.11, 'fails'],
  ] as const)('a hole of %s ± %s over 0.9 to 1.1 mm %s', (holeMm, holeToleranceMm, verdict) => {
    const rows = [leadHole({ ...lead, holeMm, holeToleranceMm })]
    expect(findingOf(holeProducibility, board(rows)).verdict).toBe(verdict)
  })
  test('the remedy puts the hole into the window', () => {
    const rows = [leadHole({ ...lead, holeMm: 1.2 })]
    expect(afterCellRemedy(holeProducibility, factsWith(board(rows))).verdict).toBe('meets')
  })
  // Lead 0.4 to 1.0 mm at level B: least 1.2, most 1.1.
  test('an empty window fails whatever the hole, and says so', () => {
    const rows = [leadHole({ leadMm: 0.7, leadToleranceMm: 0.3, holeMm: 1.15, holeToleranceMm: 0 })]
    const finding = findingOf(holeProducibility, board(rows))
    expect(finding.verdict).toBe('fails')
    expect(finding.found).toContain('no hole suits')
    expect(finding.remedy?.message).toContain('ask for a closer lead')
  })
  // Lead 0.98 to 1.02 mm: level B leaves 1.22 to 1.68 mm, a radial clearance of 0.10 to 0.25 mm 1.22 to 1.48 mm (by hand).
  test('its remedy keeps the radial clearance too, and that of the clearance keeps the level', () => {
    const rows = [leadHole({ leadMm: 1, leadToleranceMm: 0.02, holeMm: 1.1, landMm: 2.3 })]
    const facts = factsWith(board(rows))
    for (const rule of [holeProducibility, leadClearance]) {
      const { remedy } = judge(rule, facts)
      if (!isCellRemedy(remedy)) throw new Error(`${rule.id} offers no hole.`)
      const mended = withCell(facts, remedy)
      expect(judge(holeProducibility, mended).verdict).toBe('meets')
      expect(judge(leadClearance, mended).verdict).toBe('meets')
    }
  })
  test('levels speak of plated holes only', () => {
    expect(findingOf(holeProducibility, board([leadHole({ plated: false })])).verdict).toBe('not applicable')
  })
  test('a remedy finds its row behind unplated ones', () => {
    const rows = [leadHole({ plated: false }), leadHole({ component: 'T1', holeMm: 0.9 })]
    expect(afterCellRemedy(holeProducibility, factsWith(board(rows))).verdict).toBe('meets')
  })
})
