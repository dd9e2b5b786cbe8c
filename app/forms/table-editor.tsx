'use client'
import { useState, type ClipboardEvent } from 'react'
import { useFormState } from '@/app/forms/command-form'
import { textOfCell } from '@/app/forms/column-value'
import { choicesOf, FLAG_CHOICES } from '@/app/forms/column-field'
import { Button } from '@/app/ui/button'
import { printedUnit } from '@/shared/quantity/unit'
import type { Column } from '@/shared/plan/column'

interface TableEditorProps {
  /** Fields are named `name.0.column`, `name.1.column`, … */
  name: string
  caption: string
  columns: Readonly<Record<string, Column>>
  rows: readonly Readonly<Record<string, unknown>>[]
  maxRows: number
}

const SPARE_ROWS = 2

/**
 * A table to fill in. Without scripts it offers the rows there are and some
 * blank ones; with scripts rows are added and removed, and cells pasted from a spreadsheet.
 */
export function TableEditor({ name, caption, columns, rows, maxRows }: TableEditorProps) {
  const { typed, fields } = useFormState()
  const [count, setCount] = useState(() =>
    Math.min(maxRows, Math.max(1, Math.max(rows.length, rowsTyped(typed, name)) + SPARE_ROWS)),
  )
  const entries = Object.entries(columns)
  const valueAt = (row: number, key: string, column: Column): string =>
    typed[`${name}.${row}.${key}`] ?? textOfCell(column, rows[row]?.[key])
  return (
    <div className="ruled ruled-scroll table-editor" role="region" aria-label={caption} tabIndex={0}>
      <table>
        <caption className="sr-only">{caption}</caption>
        <thead>
          <tr>
            <th scope="col">No.</th>
            {entries.map(([key, column]) => (
              <th key={key} scope="col" title={column.help}>
                {column.label}
                {column.kind === 'number' && printedUnit(column.unit) && (
                  <span className="quantity-unit"> {printedUnit(column.unit)}</span>
                )}
              </th>
            ))}
          </tr>
        </thead>
        <tbody onPaste={pasteCells}>
          {Array.from({ length: count }, (_, row) => (
            <tr key={row}>
              <th scope="row">{row + 1}</th>
              {entries.map(([key, column]) => {
                const field = `${name}.${row}.${key}`
                return (
                  <td key={key}>
                    <CellBox
                      key={typed[field] ?? ''}
                      field={field}
                      column={column}
                      value={valueAt(row, key, column)}
                      label={`${column.label}, row ${row + 1}`}
                      error={fields[`value.${row}.${key}`] ?? fields[field]}
                    />
                  </td>
                )
              })}
            </tr>
          ))}
        </tbody>
      </table>
      {count < maxRows && (
        <Button kind="plain" onClick={() => setCount(Math.min(maxRows, count + 5))}>
          Add five rows
        </Button>
      )}
    </div>
  )
}

function CellBox({
  field,
  column,
  value,
  label,
  error,
}: {
  field: string
  column: Column
  value: string
  label: string
  error: string | undefined
}) {
  const common = {
    name: field,
    defaultValue: value,
    'aria-label': label,
    'aria-invalid': error ? true : undefined,
    title: error,
  } as const
  const box =
    column.kind === 'choice' || column.kind === 'flag' ? (
      <select className="control" {...common}>
        {(column.kind === 'choice' ? choicesOf(column) : FLAG_CHOICES).map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.text}
          </option>
        ))}
      </select>
    ) : (
      <input
        className={column.kind === 'number' ? 'control control-number' : 'control'}
        type={column.kind === 'date' ? 'date' : 'text'}
        inputMode={column.kind === 'number' ? 'decimal' : undefined}
        {...common}
      />
    )
  return (
    <>
      {box}
      {error && <p className="field-error">{error}</p>}
    </>
  )
}

/** Cells copied from a spreadsheet fill the boxes to the right and below the one they are pasted into. */
function pasteCells(event: ClipboardEvent<HTMLTableSectionElement>): void {
  const text = event.clipboardData.getData('text/plain')
  if (!/[\t\n]/.test(text.trim())) return
  const cell = (event.target as HTMLElement).closest('td')
  const row = cell?.parentElement
  if (!cell || !row) return
  event.preventDefault()
  const rows = [...event.currentTarget.rows]
  const [startRow, startCell] = [rows.indexOf(row as HTMLTableRowElement), cell.cellIndex]
  text
    .replace(/\r?\n$/, '')
    .split(/\r?\n/)
    .forEach((line, down) =>
      line.split('\t').forEach((value, right) => {
        const box = rows[startRow + down]?.cells[startCell + right]?.querySelector<
          HTMLInputElement | HTMLSelectElement
        >('input, select')
        if (!box) return
        const option =
          box instanceof HTMLSelectElement
            ? [...box.options].find(
                (entry) =>
                  entry.text.toLowerCase() === value.trim().toLowerCase() || entry.value === value.trim(),
              )
            : undefined
        box.value = option ? option.value : value.trim()
        box.dispatchEvent(new Event('input', { bubbles: true }))
      }),
    )
}

const rowsTyped = (typed: Readonly<Record<string, string>>, name: string): number =>
  Math.max(
    0,
    ...Object.keys(typed).map((key) =>
      key.startsWith(`${name}.`) && typed[key]
        ? Number(key.slice(name.length + 1).split('.')[0]) + 1 || 0
        : 0,
    ),
  )
