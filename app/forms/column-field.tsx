'use client'
import { textOfCell } from '@/app/forms/column-value'
import { boxesOf } from '@/app/forms/columns/column-boxes'
import { useWorks } from '@/app/forms/works'
import type { Column } from '@/shared/columns/column'

interface ColumnFieldProps {
  name: string
  column: Column
  value?: unknown
  /** Said instead of the column's own help. */
  hint?: string
}

/** The field of one declared column, by its kind. */
export function ColumnField({ name, column, value, hint }: ColumnFieldProps) {
  const { notation } = useWorks()
  return boxesOf(column).field(column, {
    name,
    label: column.label,
    hint: hint ?? column.help,
    optional: column.optional,
    defaultValue: textOfCell(column, value, notation),
  })
}
