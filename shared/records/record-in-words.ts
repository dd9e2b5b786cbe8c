import { capitalised } from '@/shared/quantity/capitalised'
import { kindOf } from '@/shared/columns/column-kinds'
import type { RecordKind } from './record-kind'
import { RECORD_KINDS, type RecordKindKey } from './record-kinds'

/** One record in a line: its kind and every value that is there, as printed. */
export function recordInWords(kind: RecordKindKey, row: Readonly<Record<string, unknown>>): string {
  const { label, columns }: RecordKind = RECORD_KINDS[kind]
  const values = Object.entries(columns).flatMap(([key, column]) => {
    const value = row[key]
    const said = value === undefined || value === '' ? '' : kindOf(column).withoutLabel(column, value)
    return said === '' ? [] : [said]
  })
  return `${capitalised(label)}: ${values.join(', ')}`
}
