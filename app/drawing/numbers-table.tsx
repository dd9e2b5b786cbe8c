import type { ReactNode } from 'react'
import { Disclosure } from '@/app/ui/disclosure'
import { RuledTable } from '@/app/ui/ruled-table'

/** The numbers behind a drawing. The first column names the row; the others are numbers unless said to be text. */
export type Numbers = {
  columns: readonly { label: string; set?: 'text' | 'number' }[]
  rows: readonly (readonly ReactNode[])[]
}

/** What a cell without a number says; a column of nothing else is left out. */
const NOTHING = '–'

/** The columns that say something, each with its place in a row. */
export const columnsShown = ({ columns, rows }: Numbers) =>
  columns
    .map((column, at) => ({ ...column, at }))
    .filter(({ at }) => !rows.every((row) => row[at] === NOTHING))

type NumbersTableProps = {
  title: string
  numbers: Numbers
  folded: boolean
  /** How it fits a narrow place; see `RuledTable`. */
  narrow: 'cards' | 'scroll'
}

/** The numbers of a drawing as a table, folded away or in sight. */
export function NumbersTable({ title, numbers, folded, narrow }: NumbersTableProps) {
  const table = (
    <RuledTable
      caption={`Numbers of “${title}”`}
      captionHidden
      narrow={narrow}
      columns={columnsShown(numbers).map(({ label, set, at }) => ({
        label,
        set: set ?? (at === 0 ? 'text' : 'number'),
        names: at === 0,
        cell: (row: readonly ReactNode[]) => row[at],
      }))}
      rows={numbers.rows}
      rowKey={(_, position) => position}
    />
  )
  return folded ? (
    <Disclosure summary="Data table" printed={false}>
      {table}
    </Disclosure>
  ) : (
    <div>{table}</div>
  )
}
