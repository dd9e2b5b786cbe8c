import { notationIn } from '@/app/forms/works-in-form'
import type { Cell, Column } from '@/shared/columns/column'
import { kindOf } from '@/shared/columns/column-kinds'
import type { Notation } from '@/shared/quantity/notation'

/** What was typed into a column's field, as its kind reads it; undefined when nothing was. */
export const cellFrom = (
  column: Column,
  typed: FormDataEntryValue | null,
  notation: Notation,
): Cell | undefined => kindOf(column).fromTyped(column, typeof typed === 'string' ? typed : null, notation)

/** One column's value from a form. */
export const valueFromForm = (form: FormData, name: string, column: Column): Cell | undefined =>
  cellFrom(column, form.get(name), notationIn(form))

/** A row of fields named `prefix.column`; empty cells are left out. */
export function rowFromForm(
  form: FormData,
  prefix: string,
  columns: Readonly<Record<string, Column>>,
): Record<string, Cell> {
  const cells = Object.entries(columns).map(
    ([key, column]) => [key, valueFromForm(form, `${prefix}.${key}`, column)] as const,
  )
  return Object.fromEntries(cells.filter((cell): cell is [string, Cell] => cell[1] !== undefined))
}

/** All rows of a table editor, in order; rows with nothing typed in them are left out. */
export function rowsFromForm(form: FormData, name: string, columns: Readonly<Record<string, Column>>) {
  return rowsTypedInto(name, columns, [...form.keys()], (field) => form.get(field)).map((index) =>
    rowFromForm(form, `${name}.${index}`, columns),
  )
}

/** Positions of the rows in which something was typed or chosen. */
export function rowsTypedInto(
  name: string,
  columns: Readonly<Record<string, Column>>,
  fields: readonly string[],
  typed: (field: string) => unknown,
): number[] {
  const positions = fields
    .filter((field) => field.startsWith(`${name}.`))
    .map((field) => Number(field.slice(name.length + 1).split('.')[0]))
    .filter((position) => Number.isInteger(position))
  return [...new Set(positions)]
    .sort((a, b) => a - b)
    .filter((position) =>
      Object.keys(columns).some((key) => String(typed(`${name}.${position}.${key}`) ?? '').trim() !== ''),
    )
}

/** A stored value as its field shows it. */
export const textOfCell = (column: Column, value: unknown, notation: Notation): string =>
  value === undefined || value === null ? '' : kindOf(column).toTyped(column, value, notation)
