import { useState } from 'react'
import { rowsTypedInto, textOfCell } from '@/app/forms/column-value'
import type { FormState } from '@/app/forms/form-state'
import { useWorks } from '@/app/forms/works'
import type { Column } from '@/shared/columns/column'
import type { Notation } from '@/shared/quantity/notation'

type Columns = Readonly<Record<string, Column>>
type Cells = Readonly<Record<string, string>>

/** A row of the editor: an id that stays with its boxes, and what they started with. */
export interface EditorRow {
  readonly id: number
  readonly cells: Cells
}

const SPARE_ROWS = 3

/** The rows of a table editor, and where the row that was sent as the nth stands now. */
export function useEditorRows(
  name: string,
  columns: Columns,
  given: readonly Readonly<Record<string, unknown>>[],
  maxRows: number,
  state: FormState,
) {
  const { notation } = useWorks()
  const [rows, setRows] = useState(() => {
    const cells = given.map((row) => cellsOf(columns, row, notation))
    return firstRows(name, columns, cells, maxRows, state.typed)
  })
  const [sent, setSent] = useState({ state, order: rows.map(({ id }) => id) })
  if (sent.state !== state) setSent({ state, order: rows.map(({ id }) => id) })
  return { rows, setRows, order: sent.order }
}

function firstRows(
  name: string,
  columns: Columns,
  given: readonly Cells[],
  maxRows: number,
  typed: Cells,
): EditorRow[] {
  const last = Math.max(-1, ...rowsTypedInto(name, columns, Object.keys(typed), (field) => typed[field]))
  const count = Math.min(maxRows, Math.max(given.length, last + 1) + SPARE_ROWS)
  return Array.from({ length: count }, (_, id) => ({ id, cells: given[id] ?? {} }))
}

const cellsOf = (columns: Columns, row: Readonly<Record<string, unknown>>, notation: Notation): Cells =>
  Object.fromEntries(
    Object.entries(columns).map(([key, column]) => [key, textOfCell(column, row[key], notation)]),
  )

/** An id no row has yet. */
export const freshId = (rows: readonly EditorRow[]): number => Math.max(-1, ...rows.map(({ id }) => id)) + 1

/**
 * What is wrong with a cell. Blank rows are not sent, so that the command
 * counts only the rows something was typed into; others name the row as it is sent.
 */
export function cellError(
  { fields, typed }: FormState,
  name: string,
  columns: Columns,
  position: number,
  key: string,
): string | undefined {
  const counted = rowsTypedInto(name, columns, Object.keys(typed), (field) => typed[field]).indexOf(position)
  if (counted < 0) return undefined
  return fields[`value.${counted}.${key}`] ?? fields[`${name}.${counted}.${key}`]
}
