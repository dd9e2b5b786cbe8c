import type { NumberColumn } from '@/shared/columns/column'
import type { ColumnKind } from '@/shared/columns/column-kind'
import { numberWanted } from '@/shared/columns/number-wanted'
import { isToldFromZero } from '@/shared/quantity/smallest-number'
import { decimalText, decimalTyped } from '@/shared/quantity/decimal-typed'
import { formatQuantity } from '@/shared/quantity/format'

const inWords = ({ unit }: NumberColumn, value: unknown): string =>
  typeof value === 'number' ? formatQuantity(value, unit, 6) : String(value)

/** A number with unit and bounds. */
export const NUMBER_COLUMN: ColumnKind<NumberColumn> = {
  schema(make, { label, unit, min, max, whole }) {
    const range = `${label} lies between ${min} and ${max}${unit === '1' ? '' : ` ${unit}`}.`
    const number = make
      .number({ error: numberWanted(label) })
      .min(min, range)
      .max(max, range)
      .refine(isToldFromZero, `${label} is too small to be told from zero: enter 0.`)
    return whole ? number.int(`${label} must be a whole number.`) : number
  },
  fromTyped(_column, typed, { decimal }) {
    const text = typed?.trim() ?? ''
    return text ? (decimalTyped(text, decimal) ?? text) : undefined
  },
  toTyped: (_column, value, { decimal }) =>
    typeof value === 'number' ? decimalText(value, decimal) : String(value),
  fromSpreadsheet: (_column, text) => text,
  readingTest:
    ({ min, max, whole }) =>
    (cell) =>
      typeof cell === 'number' &&
      cell >= min &&
      cell <= max &&
      isToldFromZero(cell) &&
      (!whole || Number.isInteger(cell)),
  unit: ({ unit }) => unit,
  inWords,
  inSentence: inWords,
  withoutLabel: ({ unit }, value) => formatQuantity(Number(value), unit),
}
