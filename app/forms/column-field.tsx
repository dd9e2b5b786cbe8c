'use client'
import { ChoiceBox, NumberBox, TextBox } from '@/app/forms/fields'
import { textOfCell } from '@/app/forms/column-value'
import { printedUnit } from '@/shared/quantity/unit'
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
  const common = {
    name,
    label: column.label,
    hint: hint ?? column.help,
    optional: column.optional,
    defaultValue: textOfCell(column, value),
  }
  switch (column.kind) {
    case 'number':
      return <NumberBox {...common} unit={printedUnit(column.unit)} />
    case 'choice':
      return <ChoiceBox {...common} choices={choicesOf(column)} />
    case 'flag':
      return <ChoiceBox {...common} choices={FLAG_CHOICES} />
    case 'date':
      return <TextBox {...common} type="date" />
    case 'text':
      return <TextBox {...common} maxLength={column.maxLength} />
  }
}

export const FLAG_CHOICES = [
  { value: '', text: 'Choose …' },
  { value: 'yes', text: 'Yes' },
  { value: 'no', text: 'No' },
]

export const choicesOf = (column: Extract<Column, { kind: 'choice' }>) => [
  { value: '', text: column.optional ? 'not said' : 'Choose …' },
  ...column.options.map((option) => ({ value: option.value, text: option.label })),
]
