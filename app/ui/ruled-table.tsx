import { useId, type Key, type ReactNode } from 'react'
import { TakeTable } from './take-table'

/** One column: its heading, how a row fills it, and how it is set. */
export type Column<Row> = {
  /** Plain words; also the label beside the value when rows stand as cards. */
  label: string
  /** What stands in the head when it is more than the words, such as a link that sorts. */
  heading?: ReactNode
  /** Sort order the table is in by this column, if it is. */
  sorted?: 'ascending' | 'descending'
  cell: (row: Row, position: number) => ReactNode
  /** `number` is set flush right; `shrink` takes only the room it needs. */
  set?: 'text' | 'number' | 'shrink'
  /** The cell names its row. One column should. */
  names?: boolean
}

/** Rows under a heading of their own. */
export type RowGroup<Row> = { key: Key; heading: ReactNode; rows: readonly Row[] }

type RuledTableProps<Row> = {
  caption: ReactNode
  /** Keep the caption for screen readers where a visible heading already says it. */
  captionHidden?: boolean
  columns: readonly Column<Row>[]
  rows?: readonly Row[]
  groups?: readonly RowGroup<Row>[]
  rowKey: (row: Row, position: number) => Key
  /** Whether a row is printed; each is, unless said otherwise. */
  onPaper?: (row: Row) => boolean
  /**
   * In a narrow place: `cards` (each row becomes label and value lines),
   * `cards-early` (the same, already at half a desk), or `scroll` in its own box.
   */
  narrow?: 'cards' | 'cards-early' | 'scroll'
  /** Where the whole table can be taken along for a spreadsheet. */
  take?: string
}

/** A ruled table with a caption; never wider than its place. */
export function RuledTable<Row>({
  caption,
  captionHidden,
  narrow = 'cards',
  take,
  ...table
}: RuledTableProps<Row>) {
  const captionId = useId()
  const body = (
    <table role="table" aria-labelledby={captionId}>
      <caption id={captionId} className={captionHidden ? 'sr-only' : undefined}>
        {caption}
      </caption>
      <TableHead columns={table.columns} />
      <TableBody {...table} />
    </table>
  )
  if (narrow !== 'scroll') {
    return (
      <>
        <div className="ruled">
          <div className={narrow === 'cards' ? 'ruled-cards' : 'ruled-cards-early'}>{body}</div>
        </div>
        {take && <TakeTable address={take} what={caption} />}
      </>
    )
  }
  return (
    <>
      <div className="ruled ruled-scroll" role="region" aria-labelledby={captionId} tabIndex={0}>
        {body}
      </div>
      {take && <TakeTable address={take} what={caption} />}
    </>
  )
}

function TableHead<Row>({ columns }: { columns: readonly Column<Row>[] }) {
  return (
    <thead role="rowgroup">
      <tr role="row">
        {columns.map(({ label, heading, sorted, set }) => (
          <th
            key={label}
            role="columnheader"
            scope="col"
            {...(sorted && { 'aria-sort': sorted })}
            {...setAs(set)}
          >
            {heading ?? label}
          </th>
        ))}
      </tr>
    </thead>
  )
}

function TableBody<Row>({
  columns,
  rows = [],
  groups = [],
  rowKey,
  onPaper,
}: Omit<RuledTableProps<Row>, 'caption' | 'captionHidden' | 'narrow' | 'take'>) {
  const rowsOf = (some: readonly Row[]) =>
    some.map((row, position) => (
      <tr
        key={rowKey(row, position)}
        role="row"
        className={onPaper?.(row) === false ? 'print-hidden' : undefined}
      >
        {columns.map((column) => tableCell(column, column.cell(row, position)))}
      </tr>
    ))
  return (
    <>
      {rows.length > 0 && <tbody role="rowgroup">{rowsOf(rows)}</tbody>}
      {groups.map(({ key, heading, rows: grouped }) => (
        <tbody key={key} role="rowgroup">
          <tr role="row" className="ruled-group">
            <th role="rowheader" scope="rowgroup" colSpan={columns.length}>
              {heading}
            </th>
          </tr>
          {rowsOf(grouped)}
        </tbody>
      ))}
    </>
  )
}

/** A plain function: a component for each cell of a long table would cost more than the cell. */
function tableCell<Row>({ label, names, set }: Column<Row>, children: ReactNode): ReactNode {
  if (names) {
    return (
      <th key={label} role="rowheader" scope="row" {...setAs(set)}>
        {children}
      </th>
    )
  }
  return (
    <td key={label} role="cell" {...setAs(set)} data-label={label}>
      {children}
    </td>
  )
}

/** Nothing said where nothing is to be said: every attribute of every cell travels twice. */
const setAs = (set: Column<unknown>['set']) => (set && set !== 'text' ? { className: set } : undefined)
