import type { Column } from '@/shared/columns/column'
import { kindOf } from '@/shared/columns/column-kinds'
import { PART_COLUMNS } from './part-columns'

type Values = Readonly<Record<string, unknown>>

const inWords = (column: Column, value: unknown): string =>
  value === undefined || value === null ? 'nothing' : kindOf(column).inWords(column, value)

/** What differs between two revisions of a part, a line a value; empty where nothing does. */
export const partDifference = (before: object, now: object): string[] =>
  Object.entries<Column>(PART_COLUMNS).flatMap(([key, column]) => {
    const [was, is] = [(before as Values)[key] ?? null, (now as Values)[key] ?? null]
    return was === is ? [] : [`${column.label}: ${inWords(column, was)} → ${inWords(column, is)}`]
  })
