import fc from 'fast-check'
import type { Column, ColumnKindName, ColumnOf } from '@/shared/columns/column'
import type { Parameter } from '@/shared/plan/parameter'

/** Days around the one on which the laws judge, leap days, and the ends of the calendar. */
export const DAYS = [
  '0001-01-01',
  '1899-12-31',
  '2024-02-29',
  '2025-12-31',
  '2026-01-31',
  '2026-02-28',
  '2026-03-01',
  '2026-03-02',
  '2026-05-31',
  '2027-06-30',
  '2028-02-29',
  '9999-12-31',
] as const

/** Few, so that records name the same lots, boards and people; among them lists, ranges and names that objects have already. */
export const NAMES = [
  'A',
  'B',
  'A-1',
  'a-1',
  'A-1, A-2',
  'A-1 to A-99999999',
  'T1-3',
  'C1–C8',
  '7',
  '2608',
  '9853',
  'constructor',
  '__proto__',
  'Ω ﬁ 𝛼',
] as const

/** Any value that a column accepts: bounds included, for they are where rules break. */
export function anyCell(column: Column): fc.Arbitrary<unknown> {
  const cell = anyRequired(column)
  return column.optional ? fc.option(cell, { nil: undefined }) : cell
}

const anyRequired = (column: Column): fc.Arbitrary<unknown> =>
  (ANY_OF_KIND[column.kind] as (column: Column) => fc.Arbitrary<unknown>)(column)

const ANY_OF_KIND: { readonly [K in ColumnKindName]: (column: ColumnOf<K>) => fc.Arbitrary<unknown> } = {
  number({ min, max, whole }) {
    const inside = whole
      ? fc.integer({ min: Math.ceil(min), max: Math.floor(max) })
      : fc.double({ min, max, noNaN: true }).map((number) => number + 0)
    return fc.oneof(inside, fc.constantFrom(min, max))
  },
  choice: ({ options }) => fc.constantFrom(...options.map(({ value }) => value)),
  text: ({ maxLength }) =>
    fc
      .oneof({ weight: 20, arbitrary: fc.constantFrom(...NAMES) }, fc.constant('x'.repeat(maxLength)))
      .map((text) => text.slice(0, maxLength).trim()),
  flag: () => fc.boolean(),
  date: () => fc.constantFrom(...DAYS),
}

/** Any row of these columns. */
export const anyRow = (columns: Readonly<Record<string, Column>>): fc.Arbitrary<Record<string, unknown>> =>
  fc.record(Object.fromEntries(Object.entries(columns).map(([key, column]) => [key, anyCell(column)])))

/** Any value that a parameter accepts. */
export const anyValue = ({ shape }: Parameter): fc.Arbitrary<unknown> =>
  shape.kind === 'field'
    ? anyCell(shape.column)
    : fc.array(anyRow(shape.columns), { minLength: 1, maxLength: Math.min(4, shape.maxRows) })
