import type { Column } from '@/shared/columns/column'

type Cell = string | number | boolean | undefined

/**
 * What was typed into a column's field: a number, a yes or no, a text. A
 * number that is none stays the text it is, so that its column's own sentence
 * says so. Nothing typed or chosen is undefined, and never a no; only a box to
 * tick that is not there at all is one.
 */
export function cellFrom(column: Column, typed: FormDataEntryValue | null): Cell {
  if (column.kind === 'flag') return typed === '' ? undefined : typed === 'yes' || typed === 'on'
  const text = typeof typed === 'string' ? typed.trim() : ''
  if (!text) return undefined
  if (column.kind !== 'number') return text
  const value = Number(text.replace('−', '-').replace(/[\s\u202f]/g, ''))
  return Number.isNaN(value) ? text : value
}

/** One column's value from a form. */
export const valueFromForm = (form: FormData, name: string, column: Column): Cell =>
  cellFrom(column, form.get(name))

/** A row of fields named `prefix.column`; empty cells are left out. */
export function rowFromForm(
  form: FormData,
  prefix: string,
  columns: Readonly<Record<string, Column>>,
): Record<string, string | number | boolean> {
  const cells = Object.entries(columns).map(
    ([key, column]) => [key, valueFromForm(form, `${prefix}.${key}`, column)] as const,
  )
  return Object.fromEntries(
    cells.filter((cell): cell is [string, string | number | boolean] => cell[1] !== undefined),
  )
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
export function textOfCell(column: Column, value: unknown): string {
  if (value === undefined || value === null) return ''
  if (column.kind === 'flag') return value === true ? 'yes' : 'no'
  return String(value)
}
