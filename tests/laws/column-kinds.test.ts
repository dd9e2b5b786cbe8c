import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  choiceColumn,
  dateColumn,
  flagColumn,
  numberColumn,
  rangeColumn,
  textColumn,
  type Column,
  type ColumnKindName,
} from '@/shared/columns/column'
import { kindOf } from '@/shared/columns/column-kinds'
import { columnSchema } from '@/shared/columns/column-schema'
import { NEUTRAL_NOTATION, notationOf } from '@/shared/quantity/notation'
import { readingsFromRows } from '@/shared/records/readings-from-rows'
import { anyCell } from './any-value'

/** One column of every kind. */
const COLUMNS: Readonly<Record<ColumnKindName, Column>> = {
  number: numberColumn({ label: 'Hole', unit: 'mm', min: -2, max: 10 }),
  range: rangeColumn({ label: 'Gap', unit: 'mm', min: -1, max: 10 }),
  choice: choiceColumn({
    label: 'Shape',
    options: [
      { value: 'round', label: 'Round' },
      { value: 'flat', label: 'Flat ribbon' },
    ],
  }),
  text: textColumn({ label: 'Name', maxLength: 5 }),
  flag: flagColumn({ label: 'Plated' }),
  date: dateColumn({ label: 'Day' }),
}
/** As locales write: de-DE, en-US, en-GB, sv-SE and none stated. */
const NOTATIONS = [...['de-DE', 'en-US', 'en-GB', 'sv-SE'].map((tag) => notationOf(tag)!), NEUTRAL_NOTATION]
/** As it stands in readings, which hold numbers and text only. */
const asReading = (value: unknown) =>
  readingsFromRows([{ cell: value as number }]).columns['cell']?.[0] as number | string
const JUNK = fc.oneof(
  fc.integer({ min: -20, max: 20 }),
  fc.double({ min: -4, max: 12, noNaN: true }),
  fc.string({ maxLength: 8 }),
  fc.constantFrom(
    'yes',
    'no',
    'on',
    'round',
    'Round',
    '2026-03-31',
    '2026-13-01',
    '2026-02-30',
    '31.03.2026',
    ' ',
    '5',
  ),
)

describe.each(Object.entries(COLUMNS))('a %s', (_kind, column) => {
  const kind = kindOf(column)
  const accepts = (value: unknown): boolean => columnSchema(column).safeParse(value).success

  test('law: what its field shows of a value is read back as that value, and accepted', () => {
    fc.assert(
      fc.property(anyCell(column), fc.constantFrom(...NOTATIONS), (value, notation) => {
        const back = kind.fromTyped(column, kind.toTyped(column, value, notation), notation)
        expect(back === value).toBe(true)
        expect(accepts(back)).toBe(true)
      }),
    )
  })
  test('law: nothing typed is nothing, and nothing is refused', () => {
    expect(kind.fromTyped(column, '', NEUTRAL_NOTATION)).toBeUndefined()
    expect(accepts(undefined)).toBe(false)
  })
  test('law: readings take every value that the schema takes, and no other cell', () => {
    const fits = kind.readingTest(column)
    fc.assert(
      fc.property(anyCell(column), (value) => {
        expect(fits(asReading(value))).toBe(true)
      }),
    )
    fc.assert(
      fc.property(JUNK, (cell) => {
        const value = typeof cell === 'number' ? cell : kind.fromTyped(column, cell, NEUTRAL_NOTATION)
        const same = value !== undefined && asReading(value) === cell
        // A text is kept with the blanks around it; a number that was typed is no cell of text.
        const kept = column.kind === 'text' && typeof cell === 'string' && cell.trim() === value
        expect(fits(cell)).toBe((same || kept) && accepts(value))
      }),
    )
  })
  test('law: a value in words says something, with its unit', () => {
    fc.assert(
      fc.property(anyCell(column), (value) => {
        const said = kind.inWords(column, value)
        expect(said).not.toBe('')
        if (kind.unit(column) !== undefined) expect(said).toMatch(/ [nµ]?m?m$/)
      }),
    )
  })
})

test('a number that no measurement could tell from zero is refused, in a field and in readings', () => {
  const column = numberColumn({ label: 'Hours', unit: 'h', min: 0, max: 10 })
  const fits = kindOf(column).readingTest(column)
  for (const [number, taken] of [
    [Number.MIN_VALUE, false],
    [1e-13, false],
    [1e-12, true],
    [0, true],
  ] as const) {
    expect(columnSchema(column).safeParse(number).success, String(number)).toBe(taken)
    expect(fits(number), String(number)).toBe(taken)
  }
})
