import { expect, test } from 'vitest'
import { boxesFrom, loadedTable } from '@/app/forms/loaded-rows'
import { choiceColumn, dateColumn, numberColumn, textColumn } from '@/shared/columns/column'

const COLUMNS = {
  name: textColumn({ label: 'Component' }),
  shape: choiceColumn({ label: 'Shape', options: [{ value: 'flat', label: 'Flat ribbon' }] }),
  holeMm: numberColumn({ label: 'Hole', unit: 'mm', min: 0, max: 5000 }),
  day: dateColumn({ label: 'Measured on' }),
}
const GERMAN = { decimal: ',', dates: 'day first' } as const

test('columns go by their headings, in any order and with their units; values by how the file writes', () => {
  const rows = [
    ['Hole, mm', 'Measured on', 'Component', 'Remark'],
    ['0,813', '31.12.2026', 'T1', 'new'],
    [],
    ['1.234,5', '2026-01-02', 'T2'],
  ]
  const { table, mapping } = loadedTable(rows, ',', COLUMNS)
  expect(mapping).toEqual({ holeMm: 0, day: 1, name: 2 })
  expect(boxesFrom(table, mapping, COLUMNS, GERMAN)).toEqual({
    faults: [],
    rows: [
      { name: 'T1', shape: '', holeMm: '0,813', day: '2026-12-31' },
      { name: 'T2', shape: '', holeMm: '1234,5', day: '2026-01-02' },
    ],
  })
})

test('a file with points fills the boxes of a works with commas', () => {
  const { table, mapping } = loadedTable([['Hole'], ['1.234']], '.', COLUMNS)
  expect(boxesFrom(table, mapping, COLUMNS, GERMAN).rows[0]?.holeMm).toBe('1,234')
})

test('without headings columns go by their place; what cannot stand in a box is named with line and column', () => {
  const { table, mapping } = loadedTable([['T1', 'round', 'abc', '31.12.26']], '.', COLUMNS)
  expect(mapping).toEqual({ name: 0, shape: 1, holeMm: 2, day: 3 })
  const { rows, faults } = boxesFrom(table, mapping, COLUMNS, GERMAN)
  expect(rows).toEqual([{ name: 'T1', shape: '', holeMm: 'abc', day: '' }])
  expect(faults).toEqual([
    'Line 1, column 2 (Shape): “round” is nothing that can stand there.',
    'Line 1, column 4 (Measured on): “31.12.26” is nothing that can stand there.',
  ])
})
