'use client'
import { choicesOf, FLAG_CHOICES } from '@/app/forms/column-field'
import type { Column } from '@/shared/columns/column'

interface CellBoxProps {
  name: string
  column: Column
  value: string
  label: string
  error: string | undefined
}

/** One cell of a table to fill in, with what is wrong beneath it. */
export function CellBox({ name, column, value, label, error }: CellBoxProps) {
  const errorId = `${name}-error`
  const common = {
    name,
    defaultValue: value,
    'aria-label': label,
    'aria-invalid': error ? true : undefined,
    'aria-describedby': error ? errorId : undefined,
  } as const
  return (
    <>
      {column.kind === 'choice' || column.kind === 'flag' ? (
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
          autoComplete="off"
          {...common}
        />
      )}
      {error && (
        <p id={errorId} className="field-error">
          {error}
        </p>
      )}
    </>
  )
}
