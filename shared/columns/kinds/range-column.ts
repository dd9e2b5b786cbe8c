import type { RangeColumn } from '@/shared/columns/column'
import type { ColumnKind } from '@/shared/columns/column-kind'
import { numberWanted } from '@/shared/columns/number-wanted'
import { decimalText } from '@/shared/quantity/decimal-typed'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { numberOrRangeTyped, rangeOfText, type Range } from '@/shared/quantity/range-text'
import { isToldFromZero } from '@/shared/quantity/smallest-number'

/** Both ends, which are the same of a number; undefined for anything else. */
function endsOf(value: unknown): Range | undefined {
  if (typeof value === 'number') return { from: value, to: value }
  return typeof value === 'string' ? rangeOfText(value) : undefined
}

const lieWithin = ({ from, to }: Range, { min, max }: RangeColumn): boolean => from >= min && to <= max

const areToldFromZero = ({ from, to }: Range): boolean => isToldFromZero(from) && isToldFromZero(to)

/** What to say of a cell that holds neither a number nor a range. */
const wanted =
  (label: string) =>
  ({ input }: { readonly input?: unknown }): string =>
    numberWanted(label)({ input }) + (input === undefined ? '' : ' A range is written “12 to 15”.')

const refusals = ({ label, unit, min, max }: RangeColumn) => ({
  within: `${label} lies between ${min} and ${max}${unit === '1' ? '' : ` ${unit}`}.`,
  tooSmall: `${label} is too small to be told from zero: enter 0.`,
})

/** What is wrong with a text as a range; undefined where nothing is. */
function whatIsWrong(column: RangeColumn, text: unknown): string | undefined {
  const ends = typeof text === 'string' ? rangeOfText(text) : undefined
  if (!ends) return wanted(column.label)({ input: text })
  const { within, tooSmall } = refusals(column)
  if (!lieWithin(ends, column)) return within
  return areToldFromZero(ends) ? undefined : tooSmall
}

function inWords({ unit }: RangeColumn, value: unknown): string {
  const ends = endsOf(value)
  if (!ends) return String(value)
  const to = formatQuantity(ends.to, unit, 6)
  return ends.from === ends.to ? to : `${formatNumber(ends.from, 6)} to ${to}`
}

/** A number, or a range between two of them, with unit and bounds. */
export const RANGE_COLUMN: ColumnKind<RangeColumn> = {
  schema(make, column) {
    const { label, min, max } = column
    const { within, tooSmall } = refusals(column)
    const number = make.number().min(min, within).max(max, within).refine(isToldFromZero, tooSmall)
    const range = make.string().refine((text) => whatIsWrong(column, text) === undefined, {
      error: ({ input }) => whatIsWrong(column, input),
    })
    return make.union([number, range], { error: wanted(label) })
  },
  fromTyped(_column, typed, { decimal }) {
    const text = typed?.trim() ?? ''
    return text ? (numberOrRangeTyped(text, decimal) ?? text) : undefined
  },
  toTyped(_column, value, { decimal }) {
    const ends = endsOf(value)
    if (!ends) return String(value)
    const [from, to] = [decimalText(ends.from, decimal), decimalText(ends.to, decimal)]
    return ends.from === ends.to ? to : `${from} to ${to}`
  },
  fromSpreadsheet: (_column, text) => text,
  readingTest: (column) => (cell) => {
    const ends = endsOf(cell)
    return ends !== undefined && lieWithin(ends, column) && areToldFromZero(ends)
  },
  unit: ({ unit }) => unit,
  inWords,
  inSentence: inWords,
  withoutLabel: inWords,
}
