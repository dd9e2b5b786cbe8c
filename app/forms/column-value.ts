import type { Column } from '@/shared/plan/column'

type Cell = string | number | boolean | undefined

/**
 * What was typed into a column's field: a number, a yes or no, a text. A
 * number that is none stays the text it is, so that its column's own sentence
 * says so. Nothing typed is undefined.
 */
export function cellFrom(column: Column, typed: FormDataEntryValue | null): Cell {
  if (column.kind === 'flag')
    return column.optional && typed === '' ? undefined : typed === 'yes' || typed === 'on'
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
  const pattern = new RegExp(`^${name.replaceAll('.', '\\.')}\\.(\\d+)\\.`)
  const indices = new Set<number>()
  for (const key of form.keys()) {
    const [, index] = pattern.exec(key) ?? []
    if (index !== undefined) indices.add(Number(index))
  }
  return [...indices]
    .sort((a, b) => a - b)
    .filter((index) =>
      Object.entries(columns).some(
        ([key, column]) =>
          column.kind !== 'flag' &&
          column.kind !== 'choice' &&
          String(form.get(`${name}.${index}.${key}`) ?? '').trim() !== '',
      ),
    )
    .map((index) => rowFromForm(form, `${name}.${index}`, columns))
}

/** A stored value as its field shows it. */
export function textOfCell(column: Column, value: unknown): string {
  if (value === undefined || value === null) return ''
  if (column.kind === 'flag') return value === true ? 'yes' : 'no'
  return String(value)
}
