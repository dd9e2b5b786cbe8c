import fc from 'fast-check'
import type { Column, ColumnKindName, ColumnOf } from '@/shared/columns/column'
import type { Parameter } from '@/shared/plan/parameter'

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
      : fc.double({ min, max, noNaN: true })
    return fc.oneof(inside, fc.constantFrom(min, max))
  },
  choice: ({ options }) => fc.constantFrom(...options.map(({ value }) => value)),
  text: ({ maxLength }) => fc.constantFrom('A', 'B', 'C1–C8').map((text) => text.slice(0, maxLength)),
  flag: () => fc.boolean(),
  date: () => fc.constantFrom('2026-01-31', '2027-06-30'),
}

/** Any value that a parameter accepts. */
export function anyValue({ shape }: Parameter): fc.Arbitrary<unknown> {
  if (shape.kind === 'field') return anyCell(shape.column)
  const row = fc.record(
    Object.fromEntries(Object.entries(shape.columns).map(([key, column]) => [key, anyCell(column)])),
  )
  return fc.array(row, { minLength: 1, maxLength: Math.min(4, shape.maxRows) })
}
