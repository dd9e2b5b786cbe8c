'use client'
import { boxesOf } from '@/app/forms/columns/column-boxes'
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
  return (
    <>
      {boxesOf(column).cell(column, {
        name,
        defaultValue: value,
        'aria-label': label,
        'aria-invalid': error ? true : undefined,
        'aria-describedby': error ? errorId : undefined,
      })}
      {error && (
        <p id={errorId} className="field-error">
          {error}
        </p>
      )}
    </>
  )
}
