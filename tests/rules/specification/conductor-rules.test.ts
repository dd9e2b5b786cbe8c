import { describe, expect, test } from 'vitest'
import { conductorRiseMax } from '@/shared/plan/limits/conductors'
import { conductorMethod, conductors, type ConductorRow } from '@/shared/plan/parameters/conductors'
import { copperFoil, serviceTemperature } from '@/shared/plan/parameters/laminate'
import { conductorCurrent } from '@/shared/rules/specification/conductor-current'
import { conductorDrop } from '@/shared/rules/specification/conductor-drop'
import { afterCellRemedy } from '../cell-remedy'
import { factsWith, findingOf, requirement, set, type SetValue } from '../facts-builder'

const conductor = (over: Partial<ConductorRow> = {}): ConductorRow => ({
  net: 'SUPPLY',
  layer: 'external',
  widthMm: 0.508,
  copperUm: 35,
  currentA: 1,
  lengthMm: 100,
  dropMostMv: undefined,
  ...over,
})
const board = (rows: readonly ConductorRow[], ...more: SetValue[]) => ({
  values: [
    set(conductors, rows),
    set(serviceTemperature, 60),
    // Heavy enough that the copper a row counts on is there.
    set(copperFoil, '105'),
    ...more,
  ],
})

describe('conductor current', () => {
  test('0.508 mm of 35 µm carries 1.46 A at 10 K by IPC-2221, 1.42 A by IPC-2152', () => {
    const finding = findingOf(conductorCurrent, board([conductor()]))
    expect(finding.verdict).toBe('meets')
    expect(finding.found).toContain('carries 1.46 A')
    expect(finding.found).toContain('carries 1.42 A')
  })
  test('inside the board the two fits disagree, and the greater rise decides unless one is chosen', () => {
    const rows = [conductor({ layer: 'internal' })]
    expect(findingOf(conductorCurrent, board(rows)).verdict).toBe('fails')
    expect(findingOf(conductorCurrent, board(rows, set(conductorMethod, 'ipc-2221'))).verdict).toBe('fails')
    expect(findingOf(conductorCurrent, board(rows, set(conductorMethod, 'ipc-2152'))).verdict).toBe('meets')
  })
  test.each(['ipc-2221', 'ipc-2152', undefined] as const)('by %s the width of the remedy meets', (method) => {
    const rows = [conductor(), conductor({ net: 'RETURN', layer: 'internal', currentA: 6 })]
    const more = method ? [set(conductorMethod, method)] : []
    const after = afterCellRemedy(conductorCurrent, factsWith(board(rows, ...more)))
    expect(after.verdict).toBe('meets')
  })
  test('within a tenth of the limit is marginal', () => {
    const finding = findingOf(conductorCurrent, board([conductor({ currentA: 1.4 })]))
    expect(finding.verdict).toBe('marginal')
  })
  test('a customer’s 5 K rules', () => {
    const finding = findingOf(conductorCurrent, {
      ...board([conductor({ currentA: 1.2 })]),
      requirements: [requirement(conductorRiseMax, 5)],
    })
    expect(finding.verdict).toBe('fails')
  })
  test('no conductor is proposed that nobody can etch', () => {
    const rows = [conductor({ currentA: 200, widthMm: 1 })]
    const { verdict, remedy } = findingOf(conductorCurrent, board(rows))
    expect(verdict).toBe('fails')
    expect(remedy?.cell).toBeUndefined()
    expect(remedy?.message).toContain('a bar or a wire')
  })
  // IPC-6012: 35 µm inner foil leaves 24.9 µm. IPC-2221 inside: 0.024 · 10^0.44 · (20 · 24.9/25.4)^0.725 mil² = 0.573 A
  // (by hand), where 35 µm would carry 0.733 A.
  test('no more copper is counted than the finished layer has', () => {
    const rows = [conductor({ layer: 'internal', currentA: 0.6 })]
    const inner = board(rows, set(copperFoil, '35'), set(conductorMethod, 'ipc-2221'))
    const finding = findingOf(conductorCurrent, inner)
    expect(finding.verdict).toBe('fails')
    expect(finding.parts?.[0]?.measured).toMatchObject({
      copper: { value: 24.9 },
      carriedByIpc2221: { value: expect.closeTo(0.573, 2) as number },
    })
    expect(findingOf(conductorCurrent, board(rows, set(conductorMethod, 'ipc-2221'))).verdict).toBe('meets')
  })
  test('without a foil there is no copper to judge by', () => {
    const { values } = board([conductor()])
    const finding = findingOf(conductorCurrent, { values: values.filter(([key]) => key !== copperFoil.key) })
    expect(finding).toMatchObject({ verdict: 'undetermined', missing: [copperFoil.label] })
  })
  test('a current beyond the chart is named', () => {
    const rows = [conductor({ net: 'BUS', currentA: 40, widthMm: 60, copperUm: 210 })]
    expect(findingOf(conductorCurrent, board(rows)).notes?.join(' ')).toContain('BUS')
  })
})

describe('voltage drop', () => {
  test('without an allowed drop the resistance is only told', () => {
    const told = conductor({ widthMm: 0.5, currentA: 0 })
    expect(findingOf(conductorDrop, board([told])).verdict).toBe('not applicable')
    const asked = conductor({ net: 'RETURN', currentA: 0.01, dropMostMv: 50 })
    const finding = findingOf(conductorDrop, board([told, asked])).parts![0]!
    expect(finding.verdict).toBe('not applicable')
    // 98.514 mΩ at 20 °C with 1.724·10⁻⁸ Ω·m, times 1 + 0.00393 · 40 (by hand): 114 mΩ.
    expect(finding.found).toContain('114 mΩ at 60 °C')
  })
  test('a drop above what the circuit bears fails, and the wider track meets', () => {
    const rows = [conductor({ dropMostMv: 50 })]
    expect(findingOf(conductorDrop, board(rows)).verdict).toBe('fails')
    expect(afterCellRemedy(conductorDrop, factsWith(board(rows))).verdict).toBe('meets')
  })
})
