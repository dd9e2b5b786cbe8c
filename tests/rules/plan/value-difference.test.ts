import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { numberColumn, textColumn } from '@/shared/columns/column'
import { choiceParameter, flagParameter, tableParameter } from '@/shared/plan/parameter'
import { valueDifference } from '@/shared/plan/value-difference'

const common = { key: 'k', label: 'K', help: '', owner: 'design' } as const
const table = tableParameter({
  ...common,
  columns: {
    name: textColumn({ label: 'Name' }),
    holeMm: numberColumn({ label: 'Hole', unit: 'mm', min: 0, max: 10 }),
  },
})

describe('the difference of two values', () => {
  test('of a choice is told by its words', () => {
    const finish = choiceParameter({
      ...common,
      options: [
        { value: 'tin', label: 'Tin' },
        { value: 'gold', label: 'Gold flash' },
      ],
    })
    expect(valueDifference(finish, 'tin', 'gold')).toEqual(['Tin → Gold flash'])
  })
  test('of a yes that was not said before', () => {
    expect(valueDifference(flagParameter(common), undefined, true)).toEqual(['nothing → yes'])
  })
  test('of a table names the row and the cell', () => {
    const before = [
      { name: 'T1', holeMm: 1 },
      { name: 'R1', holeMm: 0.8 },
    ]
    const now = [
      { name: 'T1', holeMm: 1 },
      { name: 'R1', holeMm: 0.9 },
    ]
    expect(valueDifference(table, before, now)).toEqual(['row 2 (R1), Hole: 0.8 mm → 0.9 mm'])
  })
  test('of a table that grew names the rows that came and went, each as often as it did', () => {
    const row = { name: 'T1', holeMm: 1 }
    expect(valueDifference(table, [row], [row, row])).toEqual(['row added: T1'])
    expect(valueDifference(table, [row, row, { name: 'R1', holeMm: 1 }], [row])).toEqual([
      'row taken out: T1',
      'row taken out: R1',
    ])
  })
  test('is empty exactly when the values are equal', () => {
    const rows = fc.array(
      fc.record({ name: fc.constantFrom('T1', 'R1'), holeMm: fc.integer({ min: 0, max: 3 }) }),
      { maxLength: 3 },
    )
    fc.assert(
      fc.property(rows, rows, (before, now) => {
        const equal = JSON.stringify(before) === JSON.stringify(now)
        expect(valueDifference(table, before, now).length === 0).toBe(equal)
      }),
    )
  })
})
