import { Quantity } from '@/app/ui/quantity'
import { RuledTable } from '@/app/ui/ruled-table'
import type { Column } from '@/shared/columns/column'
import { kindOf } from '@/shared/columns/column-kinds'
import type { Parameter } from '@/shared/plan/parameter'

/** A specified value as its parameter's declaration says to print it. */
export function ParameterValue({
  parameter,
  value,
  take,
}: {
  parameter: Parameter
  value: unknown
  /** Where a table of it can be taken along. */
  take?: string
}) {
  if (value === undefined || value === null) return <span className="not-specified">not specified</span>
  if (parameter.shape.kind === 'field') return <CellValue column={parameter.shape.column} value={value} />
  return (
    <ValueTable
      caption={`${parameter.label}, row by row`}
      columns={parameter.shape.columns}
      rows={value as readonly Record<string, unknown>[]}
      {...(take && { take })}
    />
  )
}

/** Rows under declared columns; a column nobody filled in is left out. */
export function ValueTable({
  caption,
  columns,
  rows,
  take,
}: {
  caption: string
  take?: string
  columns: Readonly<Record<string, Column>>
  rows: readonly Readonly<Record<string, unknown>>[]
}) {
  const used = Object.entries(columns).filter(([key]) =>
    rows.some((row) => row[key] !== undefined && row[key] !== null),
  )
  return (
    <RuledTable
      caption={caption}
      captionHidden
      narrow="scroll"
      {...(take && { take })}
      rows={rows}
      rowKey={(_row, position) => position}
      columns={used.map(([key, column], position) => ({
        label: column.label,
        names: position === 0,
        set: setOf(column),
        cell: (row: Readonly<Record<string, unknown>>) => <CellValue column={column} value={row[key]} />,
      }))}
    />
  )
}

/** How a table sets a column: flush right where it holds quantities. */
export const setOf = (column: Column): 'number' | 'text' =>
  kindOf(column).unit(column) === undefined ? 'text' : 'number'

export function CellValue({ column, value }: { column: Column; value: unknown }) {
  if (value === undefined || value === null || value === '') return <>–</>
  const kind = kindOf(column)
  const unit = kind.unit(column)
  if (unit === undefined) return <>{kind.inWords(column, value)}</>
  return <Quantity value={Number(value)} unit={unit} figures={6} />
}
