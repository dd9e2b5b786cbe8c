import { textColumn } from '@/shared/columns/column'
import { PART_COLUMNS } from '@/shared/works/part-columns'

/** A part in a row: its number, and its values. */
export const MANY_COLUMNS = {
  code: textColumn({
    label: 'Part number',
    maxLength: 80,
    alsoCalled: ['Part', 'Part no.', 'Item number', 'Article', 'Article number', 'MPN'],
  }),
  ...PART_COLUMNS,
} as const

export const MOST_AT_ONCE = 100
