import { formatQuantity } from '@/shared/quantity/format'
import type { RecordKind } from './record-kind'
import { RECORD_KINDS, type RecordKindKey } from './record-kinds'

/** One record in a line: its kind and every value that is there, as printed. */
export function recordInWords(kind: RecordKindKey, row: Readonly<Record<string, unknown>>): string {
  const { label, columns }: RecordKind = RECORD_KINDS[kind]
  const values = Object.entries(columns).flatMap(([key, column]) => {
    const value = row[key]
    if (value === undefined || value === '') return []
    if (column.kind === 'choice')
      return [column.options.find((option) => option.value === value)?.label ?? String(value)]
    if (column.kind === 'number') return [formatQuantity(Number(value), column.unit)]
    if (column.kind === 'flag') return value ? [column.label.toLowerCase()] : []
    return [String(value)]
  })
  return `${label[0]?.toUpperCase()}${label.slice(1)}: ${values.join(', ')}`
}
