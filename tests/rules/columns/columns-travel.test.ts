import { expect, test } from 'vitest'
import { ALL_PARAMETERS } from '@/shared/catalogue/standard-plan'
import { RECORD_KINDS } from '@/shared/records/record-kinds'

const columns = [
  ...ALL_PARAMETERS.flatMap(({ key, shape }) =>
    Object.entries(shape.kind === 'field' ? { value: shape.column } : shape.columns).map(
      ([name, column]) => [`${key}.${name}`, column] as const,
    ),
  ),
  ...Object.values(RECORD_KINDS).flatMap(({ key, columns: own }) =>
    Object.entries(own).map(([name, column]) => [`${key}.${name}`, column] as const),
  ),
]

// Forms draw their boxes in the browser from the declaration itself: HTML, "StructuredSerialize", takes no function.
test.each(columns)('the column %s can travel to the browser', (_name, column) => {
  expect(structuredClone(column)).toEqual(column)
})
