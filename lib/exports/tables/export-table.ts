import type { Column, ColumnKindName } from '@/shared/columns/column'
import { columnHeading } from '@/shared/columns/column-heading'
import { kindOf } from '@/shared/columns/column-kinds'

/** What a cell of an exported table is; an instant is in epoch milliseconds or RFC 3339, a date 'YYYY-MM-DD'. */
export type ExportCell = string | number | undefined | null

/** One column of an exported table: its heading, with the unit, and what its cells are. */
export interface ExportColumn<Row> {
  readonly heading: string
  readonly kind: 'text' | 'number' | 'date' | 'instant'
  /** Its numbers are amounts of money, in the currency of the works. */
  readonly money?: boolean
  readonly cell: (row: Row) => ExportCell
}

/** A table as it leaves for a spreadsheet. */
export interface ExportTable {
  /** What the file is called, without its ending. */
  readonly name: string
  readonly columns: readonly Pick<ExportColumn<never>, 'heading' | 'kind' | 'money'>[]
  readonly count: number
  /** The cells of each row, in the order of the columns. */
  readonly rows: () => Iterable<readonly ExportCell[]>
}

/** A table of these rows, by what each column takes from one. */
export const exportTable = <Row>(
  name: string,
  columns: readonly ExportColumn<Row>[],
  rows: readonly Row[],
): ExportTable => ({
  name,
  columns,
  count: rows.length,
  *rows() {
    for (const row of rows) yield columns.map(({ cell }) => cell(row))
  },
})

const columnOf =
  (kind: ExportColumn<never>['kind']) =>
  <Row>(heading: string, cell: (row: Row) => ExportCell): ExportColumn<Row> => ({ heading, kind, cell })

export const textOf = columnOf('text')
export const numberOf = columnOf('number')
export const dayOf = columnOf('date')
export const instantOf = columnOf('instant')

type DeclaredRow = Readonly<Record<string, unknown>>

/** The columns that a declaration of columns gives, choices and yes or no in words. */
export const declaredColumns = (columns: Readonly<Record<string, Column>>): ExportColumn<DeclaredRow>[] =>
  Object.entries(columns).map(([key, column]) => ({
    heading: columnHeading(column),
    kind: EXPORTED_AS[column.kind],
    money: kindOf(column).unit(column) === 'currency',
    cell: (row) => exported(column, row[key]),
  }))

const EXPORTED_AS: Readonly<Record<ColumnKindName, ExportColumn<never>['kind']>> = {
  number: 'number',
  range: 'text',
  choice: 'text',
  text: 'text',
  flag: 'text',
  date: 'date',
}

function exported(column: Column, value: unknown): ExportCell {
  if (value === undefined || value === null || value === '') return undefined
  return typeof value === 'number' ? value : kindOf(column).inWords(column, value)
}
