'use client'
import { kindOf } from '@/shared/columns/column-kinds'
import { useRef, useState, type ClipboardEvent } from 'react'
import { flushSync } from 'react-dom'
import { CellBox } from '@/app/forms/cell-box'
import { useFormState } from '@/app/forms/command-form'
import { cellError, freshId, useEditorRows, type EditorRow } from '@/app/forms/editor-rows'
import { useHydrated } from '@/app/forms/hydrated'
import { LoadRows } from '@/app/forms/load-rows'
import { pastedInto, spreadsheetCells } from '@/app/forms/spreadsheet-cells'
import { useWorks } from '@/app/forms/works'
import { Button } from '@/app/ui/button'
import type { Column } from '@/shared/columns/column'
import { columnHeading, unitToName } from '@/shared/columns/column-heading'
import type { Notation } from '@/shared/quantity/notation'

type Cells = Readonly<Record<string, string>>

interface TableEditorProps {
  /** Fields are named `name.0.column`, `name.1.column`, … */
  name: string
  caption: string
  columns: Readonly<Record<string, Column>>
  rows: readonly Readonly<Record<string, unknown>>[]
  maxRows: number
}

/**
 * A table to fill in. Without scripts it offers the rows there are and three
 * blank ones; with scripts rows are added, doubled and taken out, and cells pasted from a spreadsheet.
 */
export function TableEditor({ name, caption, columns, rows: given, maxRows }: TableEditorProps) {
  const state = useFormState()
  const { rows, setRows, order } = useEditorRows(name, columns, given, maxRows, state)
  const body = useRef<HTMLTableSectionElement>(null)
  const hydrated = useHydrated()
  /** What stood in the boxes before rows were loaded. */
  const [before, setBefore] = useState<readonly EditorRow[]>()
  const { notation } = useWorks()
  const entries = Object.entries(columns)

  const tell = () => body.current?.dispatchEvent(new Event('input', { bubbles: true }))
  const change = (next: readonly EditorRow[]) => {
    flushSync(() => setRows([...next]))
    tell()
  }
  const add = (count: number) =>
    change([
      ...rows,
      ...Array.from({ length: Math.min(count, maxRows - rows.length) }, (_, more) => ({
        id: freshId(rows) + more,
        cells: {},
      })),
    ])
  const load = (loaded: readonly Cells[], place: 'instead' | 'below') => {
    const standing = rows.map((row, position) => ({
      ...row,
      cells: typedIn(body.current?.rows[position], name, position),
    }))
    setBefore(standing)
    const kept =
      place === 'instead'
        ? []
        : standing.filter(({ cells }) => Object.values(cells).some((cell) => cell.trim() !== ''))
    const first = freshId(rows)
    change([
      ...kept.slice(0, Math.max(0, maxRows - loaded.length)),
      ...loaded.map((cells, more) => ({ id: first + more, cells })),
    ])
  }
  const putBack = () => {
    if (!before) return
    const first = freshId(rows)
    change(before.map(({ cells }, more) => ({ id: first + more, cells })))
    setBefore(undefined)
  }
  const double = (position: number) => {
    const copy = { id: freshId(rows), cells: typedIn(body.current?.rows[position], name, position) }
    change(rows.toSpliced(position + 1, 0, copy))
  }
  const paste = (event: ClipboardEvent<HTMLTableSectionElement>) => {
    const cells = spreadsheetCells(event.clipboardData.getData('text/plain'), columns)
    const cell = (event.target as HTMLElement).closest('td')
    if (!cells || !cell || !body.current) return
    event.preventDefault()
    const [top, left] = [
      [...body.current.rows].indexOf(cell.parentElement as HTMLTableRowElement),
      cell.cellIndex - 1,
    ]
    if (top + cells.length > rows.length) add(top + cells.length - rows.length)
    fill(body.current, cells, entries, top, left, notation)
    tell()
  }

  return (
    <div className="table-editor">
      <table>
        <caption className="sr-only">{caption}</caption>
        <thead>
          <tr>
            <th scope="col">No.</th>
            {entries.map(([key, column]) => (
              <ColumnHead key={key} column={column} />
            ))}
            {hydrated && (
              <th scope="col">
                <span className="sr-only">Change the row</span>
              </th>
            )}
          </tr>
        </thead>
        <tbody ref={body} onPaste={paste}>
          {rows.map(({ id, cells }, position) => (
            <tr key={id}>
              <th scope="row">
                <span className="table-editor-word">Row </span>
                {position + 1}
              </th>
              {entries.map(([key, column]) => {
                const sentAs = order.indexOf(id)
                const typed = sentAs < 0 ? undefined : state.typed[`${name}.${sentAs}.${key}`]
                return (
                  <td key={key} data-label={columnHeading(column)} className={`table-editor-${column.kind}`}>
                    <CellBox
                      key={typed ?? ''}
                      name={`${name}.${position}.${key}`}
                      column={column}
                      value={typed ?? cells[key] ?? ''}
                      label={`${columnHeading(column)}, row ${position + 1}`}
                      error={sentAs < 0 ? undefined : cellError(state, name, columns, sentAs, key)}
                    />
                  </td>
                )
              })}
              {hydrated && (
                <td className="table-editor-tools">
                  <Button
                    kind="plain"
                    title="Duplicate this row"
                    aria-label={`Duplicate row ${position + 1}`}
                    disabled={rows.length >= maxRows}
                    onClick={() => double(position)}
                  >
                    Duplicate
                  </Button>
                  <Button
                    kind="plain"
                    title="Take this row out"
                    aria-label={`Remove row ${position + 1}`}
                    onClick={() => change(rows.filter((row) => row.id !== id))}
                  >
                    Remove
                  </Button>
                </td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
      <p className="field-hint">
        {hydrated && rows.length < maxRows && (
          <Button kind="plain" onClick={() => add(5)}>
            Add five rows
          </Button>
        )}{' '}
        Rows left blank are not kept{hydrated && '; cells copied from a spreadsheet can be pasted in'}. At
        most {maxRows} rows.
      </p>
      {hydrated && <LoadRows columns={columns} maxRows={maxRows} onRows={load} />}
      {before && (
        <Button kind="plain" onClick={putBack}>
          Put the rows back as they were before
        </Button>
      )}
    </div>
  )
}

function ColumnHead({ column }: { column: Column }) {
  const { currency } = useWorks()
  const unit = kindOf(column).unit(column) === 'currency' ? currency : unitToName(column)
  return (
    <th scope="col" title={column.help} className={`table-editor-${column.kind}`}>
      {column.label}
      {unit && <span className="quantity-unit"> {unit}</span>}
    </th>
  )
}

type Box = HTMLInputElement | HTMLSelectElement
const boxIn = (cell: Element | undefined): Box | null => cell?.querySelector<Box>('input, select') ?? null

/** What stands in a row's boxes now, by column. */
function typedIn(
  row: HTMLTableRowElement | undefined,
  name: string,
  position: number,
): Record<string, string> {
  const boxes = [...(row?.cells ?? [])].map(boxIn).filter((box) => box !== null)
  return Object.fromEntries(boxes.map((box) => [box.name.slice(`${name}.${position}.`.length), box.value]))
}

/** Fills the boxes to the right of and below a place. */
function fill(
  body: HTMLTableSectionElement,
  cells: readonly (readonly string[])[],
  columns: readonly (readonly [string, Column])[],
  top: number,
  left: number,
  notation: Notation,
): void {
  cells.forEach((line, down) =>
    line.forEach((text, right) => {
      const box = boxIn(body.rows[top + down]?.cells[left + right + 1])
      const column = columns[left + right]?.[1]
      if (box && column) box.value = pastedInto(column, text, notation)
    }),
  )
}
