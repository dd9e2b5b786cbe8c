import { describe, expect, test } from 'vitest'
import { cellFrom, rowsFromForm, textOfCell, valueFromForm } from '@/app/forms/column-value'
import { cellError } from '@/app/forms/editor-rows'
import { pastedInto, spreadsheetCells } from '@/app/forms/spreadsheet-cells'
import { choiceColumn, dateColumn, flagColumn, numberColumn, textColumn } from '@/shared/columns/column'
import { columnSchema } from '@/shared/columns/column-schema'
import { NEUTRAL_NOTATION } from '@/shared/quantity/notation'

const COLUMNS = {
  name: textColumn({ label: 'Name' }),
  holeMm: numberColumn({ label: 'Hole', unit: 'mm', min: 0, max: 10 }),
  plated: flagColumn({ label: 'Plated' }),
  shape: choiceColumn({
    label: 'Shape',
    options: [
      { value: 'round', label: 'Round' },
      { value: 'flat', label: 'Flat ribbon' },
    ],
  }),
}
function formOf(fields: Readonly<Record<string, string>>): FormData {
  const form = new FormData()
  for (const [name, value] of Object.entries(fields)) form.append(name, value)
  return form
}

describe('what was typed into a field', () => {
  test.each([
    ['1.35', 1.35],
    [' −0.5 ', -0.5],
    ['1 200', 1200],
    ['', undefined],
    ['1,35', '1,35'],
    ['abc', 'abc'],
  ])('the number %j is %j', (typed, value) =>
    expect(cellFrom(COLUMNS.holeMm, typed, NEUTRAL_NOTATION)).toBe(value),
  )

  test('a number typed wrongly is passed on, so that its own sentence says so', () => {
    const value = valueFromForm(formOf({ value: '1,35' }), 'value', COLUMNS.holeMm)
    expect(columnSchema(COLUMNS.holeMm).safeParse(value).error?.issues[0]?.message).toBe(
      'Hole must be a number. Write 1,35 with the decimal sign of the works and nothing between thousands.',
    )
  })
  test('a number left empty is to be filled in', () => {
    const value = valueFromForm(formOf({ value: '' }), 'value', COLUMNS.holeMm)
    expect(columnSchema(COLUMNS.holeMm).safeParse(value).error?.issues[0]?.message).toBe(
      'Hole must be filled in.',
    )
  })
  test('a yes or no that nobody chose is not a no', () => {
    expect(cellFrom(COLUMNS.plated, '', NEUTRAL_NOTATION)).toBeUndefined()
    expect(cellFrom(COLUMNS.plated, 'no', NEUTRAL_NOTATION)).toBe(false)
    expect(cellFrom(COLUMNS.plated, 'yes', NEUTRAL_NOTATION)).toBe(true)
    expect(cellFrom(COLUMNS.plated, null, NEUTRAL_NOTATION)).toBe(false)
  })
  test('comes back into its field as it was', () => {
    expect(textOfCell(COLUMNS.plated, false, NEUTRAL_NOTATION)).toBe('no')
    expect(textOfCell(COLUMNS.holeMm, 0, NEUTRAL_NOTATION)).toBe('0')
    expect(textOfCell(dateColumn({ label: 'Day' }), undefined, NEUTRAL_NOTATION)).toBe('')
  })
})

describe('the rows of a table', () => {
  const typed = {
    'value.0.name': 'T1',
    'value.0.holeMm': '1.35',
    'value.0.plated': 'yes',
    'value.0.shape': 'round',
    'value.1.name': ' ',
    'value.1.holeMm': '',
    'value.1.plated': '',
    'value.1.shape': '',
    'value.10.name': 'R1',
    'value.10.holeMm': 'x',
    'value.2.name': 'C1',
    'another.0.name': 'not of this table',
  }
  test('are those something was typed into, in the order of their numbers', () => {
    expect(rowsFromForm(formOf(typed), 'value', COLUMNS)).toEqual([
      { name: 'T1', holeMm: 1.35, plated: true, shape: 'round' },
      { name: 'C1', plated: false },
      { name: 'R1', holeMm: 'x', plated: false },
    ])
  })
  test('an error lands on the row it is about, blank rows before it or not', () => {
    const state = { typed, fields: { 'value.2.holeMm': 'Hole must be a number.' } }
    const at = (row: number) => cellError(state, 'value', COLUMNS, row, 'holeMm')
    expect(at(10)).toBe('Hole must be a number.')
    expect([0, 1, 2].map(at)).toEqual([undefined, undefined, undefined])
  })
  test('are those something was only chosen in too: nothing that was entered is left out silently', () => {
    expect(rowsFromForm(formOf({ 'value.0.plated': 'no', 'value.1.plated': '' }), 'value', COLUMNS)).toEqual([
      { plated: false },
    ])
  })
})

describe('cells pasted from a spreadsheet', () => {
  test('are lines of cells, without their heading and the last line end', () => {
    expect(spreadsheetCells('Name\tHole\r\nT1\t1.35\r\nR1\t0.95\r\n', COLUMNS)).toEqual([
      ['T1', '1.35'],
      ['R1', '0.95'],
    ])
  })
  test('one cell is left to the browser', () => expect(spreadsheetCells('1.35\n', COLUMNS)).toBeUndefined())
  test('a choice goes by its words or its value, and what is neither stays unchosen', () => {
    expect(
      ['Flat ribbon', 'flat', 'bent'].map((text) => pastedInto(COLUMNS.shape, text, NEUTRAL_NOTATION)),
    ).toEqual(['flat', 'flat', ''])
  })
  test('a yes and a no in the ways they are written; other words are neither', () => {
    const pasted = ['yes', 'TRUE', '1', 'No', 'false', '0', '', 'maybe']
    expect(pasted.map((text) => pastedInto(COLUMNS.plated, text, NEUTRAL_NOTATION))).toEqual([
      'yes',
      'yes',
      'yes',
      'no',
      'no',
      'no',
      '',
      '',
    ])
  })
})
