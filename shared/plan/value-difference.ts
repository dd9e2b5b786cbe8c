import type { Column } from '@/shared/columns/column'
import { kindOf } from '@/shared/columns/column-kinds'
import type { Parameter } from './parameter'
import { sameValue } from './same-value'

type Row = Readonly<Record<string, unknown>>

/** A cell as it is said in a sentence: with its unit, or by the words of its choice. */
const cellInWords = (column: Column, value: unknown): string =>
  value === undefined || value === null || value === '' ? 'nothing' : kindOf(column).inWords(column, value)

/**
 * What differs between two values of a parameter, a line a difference: for a
 * table, cell by cell where the rows are the same ones, else the rows that
 * came and went. Empty when nothing differs.
 */
export function valueDifference({ shape }: Parameter, before: unknown, now: unknown): string[] {
  if (sameValue(before ?? null, now ?? null)) return []
  if (shape.kind === 'field')
    return [`${cellInWords(shape.column, before)} → ${cellInWords(shape.column, now)}`]
  const [was, is] = [rowsOf(before), rowsOf(now)]
  return was.length === is.length
    ? was.flatMap((row, position) => cellDifferences(shape.columns, row, is[position] ?? {}, position))
    : rowDifferences(shape.columns, was, is)
}

function cellDifferences(
  columns: Readonly<Record<string, Column>>,
  was: Row,
  is: Row,
  position: number,
): string[] {
  return Object.entries(columns)
    .filter(([key]) => (was[key] ?? null) !== (is[key] ?? null))
    .map(
      ([key, column]) =>
        `row ${position + 1} (${nameOf(columns, was)}), ${column.label}: ${cellInWords(column, was[key])} → ${cellInWords(column, is[key])}`,
    )
}

/** Rows are told apart by their whole content: a row that changed and moved went and came. */
function rowDifferences(
  columns: Readonly<Record<string, Column>>,
  was: readonly Row[],
  is: readonly Row[],
): string[] {
  const without = (rows: readonly Row[], others: readonly Row[]) => {
    const left = [...others]
    return rows.filter((row) => {
      const found = left.findIndex((other) => sameValue(row, other))
      if (found >= 0) left.splice(found, 1)
      return found < 0
    })
  }
  return [
    ...without(was, is).map((row) => `row taken out: ${nameOf(columns, row)}`),
    ...without(is, was).map((row) => `row added: ${nameOf(columns, row)}`),
  ]
}

/** A row goes by its first column. */
function nameOf(columns: Readonly<Record<string, Column>>, row: Row): string {
  const [first] = Object.entries(columns)
  return first ? cellInWords(first[1], row[first[0]]) : ''
}

const rowsOf = (value: unknown): readonly Row[] => (Array.isArray(value) ? (value as readonly Row[]) : [])
