import { describe, expect, test } from 'vitest'
import { spacingEdition, spacings, type SpacingRow } from '@/shared/plan/parameters/spacings'
import { voltageSpacing } from '@/shared/rules/specification/voltage-spacing'
import { afterCellRemedy } from '../cell-remedy'
import { factsWith, findingOf, set, type SetValue } from '../facts-builder'
import { spacing } from './spacing-rows'

const board = (rows: readonly SpacingRow[], ...more: SetValue[]) => ({
  values: [set(spacings, rows), ...more],
})

describe('spacing for voltage', () => {
  test('below 31 V the predecessor asks six times as much, and rules unless an edition is chosen', () => {
    const rows = [spacing({ peakV: 24, category: 'B2', gapMm: 0.3 })]
    const both = findingOf(voltageSpacing, board(rows))
    expect(both.verdict).toBe('fails')
    expect(both.margin?.limit).toBe(0.64)
    const chosen = findingOf(voltageSpacing, board(rows, set(spacingEdition, 'ipc-2221')))
    expect(chosen.verdict).toBe('meets')
    expect(chosen.margin?.limit).toBe(0.1)
  })
  test('A7 at 300 V keeps the larger 0.8 mm', () => {
    const rows = [spacing({ peakV: 300, category: 'A7', gapMm: 0.5 })]
    expect(findingOf(voltageSpacing, board(rows)).margin?.limit).toBe(0.8)
  })
  test('exactly on the limit is inside, and marginal', () => {
    const rows = [spacing({ peakV: 100, category: 'B4', gapMm: 0.13 })]
    expect(findingOf(voltageSpacing, board(rows)).verdict).toBe('marginal')
  })
  test('the gap of the remedy meets', () => {
    const rows = [spacing(), spacing({ between: 'HV and GND', peakV: 600, category: 'B2', gapMm: 1 })]
    const facts = factsWith(board(rows))
    expect(findingOf(voltageSpacing, board(rows)).verdict).toBe('fails')
    expect(afterCellRemedy(voltageSpacing, facts).verdict).toBe('meets')
  })
  test('above 500 V it says that the table is carried on', () => {
    const finding = findingOf(voltageSpacing, board([spacing({ peakV: 600, gapMm: 5 })]))
    expect(finding.notes?.join(' ')).toContain('Above 500 V')
  })
  test('mains is answered with the caution that this is no safety standard', () => {
    const finding = findingOf(voltageSpacing, board([spacing({ mains: true, peakV: 325, gapMm: 3 })]))
    expect(finding.cautions?.[0]).toContain('no safety standard')
    expect(finding.cautions?.[0]).toContain('competent person')
    expect(findingOf(voltageSpacing, board([spacing()])).cautions).toBeUndefined()
  })
})
