import fc from 'fast-check'
import type { Column } from '@/shared/columns/column'
import type { Parameter } from '@/shared/plan/parameter'

/** Any value that a column accepts: bounds included, for they are where rules break. */
function anyCell(column: Column): fc.Arbitrary<unknown> {
  const cell = anyRequired(column)
  return column.optional ? fc.option(cell, { nil: undefined }) : cell
}

function anyRequired(column: Column): fc.Arbitrary<unknown> {
  switch (column.kind) {
    case 'number': {
      const { min, max, whole } = column
      const inside = whole
        ? fc.integer({ min: Math.ceil(min), max: Math.floor(max) })
        : fc.double({ min, max, noNaN: true })
      return fc.oneof(inside, fc.constantFrom(min, max))
    }
    case 'choice':
      return fc.constantFrom(...column.options.map(({ value }) => value))
    case 'text':
      return fc.constantFrom('A', 'B', 'C1–C8').map((text) => text.slice(0, column.maxLength))
    case 'flag':
      return fc.boolean()
    case 'date':
      return fc.constantFrom('2026-01-31', '2027-06-30')
  }
}

/** Any value that a parameter accepts. */
export function anyValue({ shape }: Parameter): fc.Arbitrary<unknown> {
  if (shape.kind === 'field') return anyCell(shape.column)
  const row = fc.record(
    Object.fromEntries(Object.entries(shape.columns).map(([key, column]) => [key, anyCell(column)])),
  )
  return fc.array(row, { minLength: 1, maxLength: Math.min(4, shape.maxRows) })
}
