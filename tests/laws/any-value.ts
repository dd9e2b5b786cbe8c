import fc from 'fast-check'
import type { Column, ColumnKindName, ColumnOf } from '@/shared/columns/column'
import { rangeText } from '@/shared/quantity/range-text'
import { isToldFromZero, SMALLEST_NUMBER } from '@/shared/quantity/smallest-number'
import type { Parameter } from '@/shared/plan/parameter'

/** Days around the one on which the laws judge, leap days, and the first and the last that a column takes. */
export const DAYS = [
  '1900-01-01',
  '2024-02-29',
  '2025-12-31',
  '2026-01-31',
  '2026-02-28',
  '2026-03-01',
  '2026-03-02',
  '2026-05-31',
  '2027-06-30',
  '2028-02-29',
  '2199-12-31',
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

/** A number as a column would keep it: what cannot be told from zero is zero. */
export const asHeld = (number: number): number => (isToldFromZero(number) ? number + 0 : 0)

/** Any number of a range: spread over it, at its ends, and next to nothing; minus zero is left out, for no column keeps it. */
export function anyNumber(min: number, max: number): fc.Arbitrary<number> {
  const spread = fc.integer({ min: 0, max: 1000 }).map((step) => min + (step / 1000) * (max - min))
  const ends = [min, max, SMALLEST_NUMBER].filter((end) => end >= min && end <= max)
  return fc
    .oneof(
      { weight: 3, arbitrary: spread },
      { weight: 2, arbitrary: fc.double({ min, max, noNaN: true }) },
      { weight: 1, arbitrary: fc.constantFrom(...ends) },
    )
    .map((number) => Math.max(asHeld(number), min))
}

const anyRequired = (column: Column): fc.Arbitrary<unknown> =>
  (ANY_OF_KIND[column.kind] as (column: Column) => fc.Arbitrary<unknown>)(column)

const ANY_OF_KIND: { readonly [K in ColumnKindName]: (column: ColumnOf<K>) => fc.Arbitrary<unknown> } = {
  number: ({ min, max, whole }) =>
    whole ? fc.oneof(fc.integer({ min, max }), fc.constantFrom(min, max)) : anyNumber(min, max),
  range: ({ min, max }) =>
    fc
      .tuple(anyNumber(min, max), anyNumber(min, max))
      .map(([one, other]) =>
        one === other ? one : rangeText({ from: Math.min(one, other), to: Math.max(one, other) }),
      ),
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
