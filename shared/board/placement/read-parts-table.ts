import { partsListColumns } from '@/shared/plan/parameters/parts-list'
import { referencesIn } from '@/shared/works/references'
import { READ_LIMITS } from '../read-limits'
import { columnPlaces } from '../tables/heading-columns'
import { textTable } from '../tables/text-table'
import { Unreadable } from '../unreadable'

/** One row of a parts list that came with the files of a board. */
export interface FileListRow {
  /** In capitals. */
  readonly names: readonly string[]
  readonly part?: string
  readonly quantity?: number
  readonly line: number
}

const { references, part, quantity } = partsListColumns
const COLUMNS = {
  references: [references.label, ...(references.alsoCalled ?? [])],
  part: [part.label, ...(part.alsoCalled ?? [])],
  quantity: [quantity.label, ...(quantity.alsoCalled ?? [])],
}

/**
 * Reads a parts list by the headings that the table of the specification goes
 * by: references, and part number or quantity; undefined where the text is no
 * such table. Errors: Unreadable with line and reason.
 */
export function readPartsTable(text: string): FileListRow[] | undefined {
  const places = (headings: readonly string[]) => {
    const found = columnPlaces(headings, COLUMNS)
    return found.references !== undefined && (found.part ?? found.quantity) !== undefined ? found : undefined
  }
  const table = textTable(text, (cells, separator) => separator.length === 1 && places(cells) !== undefined)
  const columns = table && places(table.headings)
  if (!columns) return undefined
  let named = 0
  return table.lines.map(({ line, cells }) => {
    const cell = (at: number | undefined): string => (at === undefined ? '' : cells[at]!)
    const names = namesIn(cell(columns.references))
    named += names.length
    if (named > READ_LIMITS.placed)
      throw new Unreadable(`The list names more than ${READ_LIMITS.placed} components.`, line)
    const number = cell(columns.part).slice(0, READ_LIMITS.nameLength)
    const pieces = quantityIn(cell(columns.quantity), line)
    return {
      names,
      ...(number !== '' && { part: number }),
      ...(pieces !== undefined && { quantity: pieces }),
      line,
    }
  })
}

/** References that follow no pattern go by their own words. */
const namesIn = (cell: string): readonly string[] =>
  referencesIn(cell).names ??
  cell
    .toUpperCase()
    .split(/[\s,;]+/)
    .filter((name) => name !== '')

function quantityIn(cell: string, line: number): number | undefined {
  if (cell === '') return undefined
  if (!/^\d{1,7}([.,]0+)?$/.test(cell))
    throw new Unreadable(`“${cell.slice(0, 40)}” is no number of pieces.`, line)
  return Number.parseInt(cell, 10)
}
