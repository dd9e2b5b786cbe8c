import type { Column } from '@/shared/columns/column'
import { kindOf } from '@/shared/columns/column-kinds'

/** Every value that is there, under its column's label, with its unit: "Store temperature 21 °C, Packing sealed bag". */
export const valuesInWords = (
  columns: Readonly<Record<string, Column>>,
  values: Readonly<Record<string, unknown>>,
): string =>
  Object.entries(columns)
    .flatMap(([key, column]) => {
      const value = values[key]
      return value === undefined || value === null || value === ''
        ? []
        : [`${column.label} ${kindOf(column).inWords(column, value)}`]
    })
    .join(', ')
