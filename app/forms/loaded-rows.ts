import { suggestMapping } from '@/lib/readings/column-mapping'
import type { Column } from '@/shared/columns/column'
import { columnHeading } from '@/shared/columns/column-heading'
import { kindOf } from '@/shared/columns/column-kinds'
import type { DecimalSign, Notation } from '@/shared/quantity/notation'

type Columns = Readonly<Record<string, Column>>

/** A table as it was read: lines of cells, of which the first may be headings. */
export interface LoadedTable {
  readonly decimal: DecimalSign
  readonly headings: readonly string[]
  readonly lines: readonly { readonly number: number; readonly cells: readonly string[] }[]
}

/** Which column of the loaded table each column is filled from, by its position; a column not named is left empty. */
export type LoadedMapping = Readonly<Record<string, number>>

/** The headings of a table and the lines beneath; where no heading is a column's, all are lines, and columns go by their place. */
export function loadedTable(
  rows: readonly (readonly string[])[],
  decimal: DecimalSign,
  columns: Columns,
): { readonly table: LoadedTable; readonly mapping: LoadedMapping } {
  const lines = rows
    .map((cells, at) => ({ number: at + 1, cells }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''))
  const [first, ...rest] = lines
  const headings = first?.cells ?? []
  const matched = suggestMapping(headings, fieldsFor(columns))
  if (Object.keys(matched).length > 0)
    return {
      table: { decimal, headings, lines: rest },
      mapping: Object.fromEntries(
        Object.entries(matched).map(([key, heading]) => [key, headings.indexOf(heading)]),
      ),
    }
  const width = Math.max(0, ...lines.map(({ cells }) => cells.length))
  const places = Array.from({ length: width }, (_, at) => `column ${at + 1}`)
  const byPlace = Object.keys(columns).map((key, at) => [key, at] as const)
  return {
    table: { decimal, headings: places, lines },
    mapping: Object.fromEntries(byPlace.filter(([, at]) => at < width)),
  }
}

const fieldsFor = (columns: Columns) =>
  Object.entries(columns).map(([name, column]) => ({
    name,
    label: column.label,
    kind: 'text' as const,
    required: false,
    alsoCalled: [columnHeading(column), ...(column.alsoCalled ?? [])],
  }))

/** The boxes of each row, and what could not be read, by line and column. */
export function boxesFrom(
  { decimal, lines }: LoadedTable,
  mapping: LoadedMapping,
  columns: Columns,
  notation: Notation,
): { readonly rows: readonly Readonly<Record<string, string>>[]; readonly faults: readonly string[] } {
  const faults: string[] = []
  const rows = lines.map(({ number, cells }) =>
    Object.fromEntries(
      Object.entries(columns).map(([key, column]) => {
        const at = mapping[key]
        const text = at === undefined ? '' : (cells[at] ?? '')
        const box = boxFrom(column, text, { ...notation, decimal }, notation)
        if (box === undefined)
          faults.push(
            `Line ${number}, column ${at! + 1} (${column.label}): “${text}” is nothing that can stand there.`,
          )
        return [key, box ?? '']
      }),
    ),
  )
  return { rows, faults }
}

/** What a cell is in its box, written as the works does; undefined where it is nothing that can stand there. */
function boxFrom(column: Column, text: string, inFile: Notation, notation: Notation): string | undefined {
  if (text === '') return ''
  const kind = kindOf(column)
  const shown = kind.fromSpreadsheet(column, text, inFile)
  if (shown === '') return undefined
  if (column.kind !== 'number') return shown
  const value = kind.fromTyped(column, shown, inFile)
  // A text that is no number stays in its box, where it can be mended.
  return typeof value === 'number' ? kind.toTyped(column, value, notation) : shown
}
