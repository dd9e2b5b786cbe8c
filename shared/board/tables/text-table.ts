import { READ_LIMITS } from '../read-limits'
import { Unreadable } from '../unreadable'
import { SEPARATORS, splitLine, type Separator } from './split-line'

export interface TableLine {
  /** In the file, from 1. */
  readonly line: number
  readonly cells: readonly string[]
}

/** A table that is kept as text: comma, semicolon, tab or aligned columns. */
export interface TextTable {
  readonly headings: readonly string[]
  /** What stands before the headings, as units do. */
  readonly before: readonly string[]
  /** As many cells as there are headings each. */
  readonly lines: readonly TableLine[]
}

/** Headings stand within so many lines, or the file is no such table. */
const HEADINGS_WITHIN = 60
/** No table of components is wider. */
const COLUMNS_MOST = 200
const COMMENT = /^\s*(#+|\/\/|!)\s*/

/**
 * The first line that `isHeading` takes for headings, with all lines beneath it;
 * undefined where none is. Headings may stand in a comment; other comments and
 * empty lines are left out. Errors: Unreadable with its line.
 */
export function textTable(
  text: string,
  isHeading: (cells: readonly string[], separator: Separator) => boolean,
): TextTable | undefined {
  const lines = linesOf(text, HEADINGS_WITHIN)
  for (const [at, line] of lines.entries()) {
    if (line.length > READ_LIMITS.tableLine) continue
    const bare = line.replace(COMMENT, '')
    for (const separator of SEPARATORS) {
      const headings = splitLine(bare, separator)
      if (!headings || headings.length > COLUMNS_MOST || !isHeading(headings, separator)) continue
      return { headings, before: lines.slice(0, at), lines: beneath(text, { at, separator, headings }) }
    }
  }
  return undefined
}

/** The first lines of a text, without splitting all of it. */
const linesOf = (text: string, most: number): string[] =>
  text.slice(0, most * READ_LIMITS.tableLine).split(/\r\n|\r|\n/, most)

interface Headed {
  /** Where the headings stand, from 0. */
  readonly at: number
  readonly separator: Separator
  readonly headings: readonly string[]
}

function beneath(text: string, { at, separator, headings }: Headed): TableLine[] {
  const lines = text.split(/\r\n|\r|\n/)
  if (lines.length > READ_LIMITS.tableLines)
    throw new Unreadable(`The table has more than ${READ_LIMITS.tableLines} lines.`, READ_LIMITS.tableLines)
  return lines.slice(at + 1).flatMap((line, below): TableLine[] => {
    const number = at + 2 + below
    if (line.length > READ_LIMITS.tableLine)
      throw new Unreadable(`The line has more than ${READ_LIMITS.tableLine} characters.`, number)
    if (line.trim() === '' || COMMENT.test(line)) return []
    const cells = cellsOf(line, separator, headings.length)
    if (!cells) throw new Unreadable('A quotation mark is not closed on its line.', number)
    if (cells.every((cell) => cell === '')) return []
    const parted = separator === 'two blanks' || separator === 'a blank'
    if (cells.length > headings.length || (parted && cells.length < headings.length))
      throw new Unreadable(
        `The line has ${cells.length} cells and the headings are ${headings.length}.`,
        number,
      )
    return [{ line: number, cells: headings.map((_, column) => cells[column] ?? '') }]
  })
}

/** Cells left empty at the end of a line are none too many; aligned columns may lie one blank apart or several. */
function cellsOf(line: string, separator: Separator, columns: number): string[] | undefined {
  const cells = splitLine(line, separator)
  if (separator === 'two blanks' && cells?.length !== columns) return splitLine(line, 'a blank')
  while (cells && cells.length > columns && cells.at(-1) === '') cells.pop()
  return cells
}
