import { READ_LIMITS } from '../read-limits'
import { columnPlaces, unitOfHeading, type ColumnPlaces } from '../tables/heading-columns'
import { textTable, type TableLine, type TextTable } from '../tables/text-table'
import { Unreadable } from '../unreadable'
import { lengthUnitFrom, MM_OF, unitStatedIn, type LengthUnit } from './length-unit'
import type { PlacementFile, PlacementRow } from './placement-file'
import { sideFrom } from './side-word'

/**
 * What the columns of a table of component centres are called: words of the trade, from memory. Where a table has more
 * than one place of a component, its middle goes before any other.
 */
const COLUMNS = {
  x: ['mid x', 'centre x', 'center x', 'x centre', 'x center', 'x mid', 'x', 'pos x', 'x pos', 'position x', 'x position', 'x location', 'location x', 'x loc', 'loc x', 'x coordinate', 'coordinate x', 'x coord', 'coord x'], // prettier-ignore
  y: ['mid y', 'centre y', 'center y', 'y centre', 'y center', 'y mid', 'y', 'pos y', 'y pos', 'position y', 'y position', 'y location', 'location y', 'y loc', 'loc y', 'y coordinate', 'coordinate y', 'y coord', 'coord y'], // prettier-ignore
  reference: ['reference', 'ref', 'ref des', 'designator', 'reference designator', 'ref designator', 'component', 'component name', 'symbol', 'name', 'part'], // prettier-ignore
  rotation: ['rotation', 'rot', 'angle', 'orientation', 'theta', 'rotate'],
  side: ['side', 'layer', 'board side', 'mount side', 'placement side', 'top bottom', 't b', 'tb'],
  value: ['value', 'val', 'comment', 'description'],
  package: ['package', 'footprint', 'pattern', 'case', 'body', 'land pattern'],
} as const
type Name = keyof typeof COLUMNS
type Columns = ColumnPlaces<Name> & Readonly<Record<'x' | 'y' | 'reference', number>>

function columnsIn(headings: readonly string[]): Columns | undefined {
  const { x, y, reference, ...rest } = columnPlaces(headings, COLUMNS)
  return x === undefined || y === undefined || reference === undefined
    ? undefined
    : { x, y, reference, ...rest }
}

/** Headings parted by blanks are also words of a text: one has to stand over numbers. */
const NUMBER = /^([+-]?(?:\d{1,12}(?:[.,]\d{0,20})?|[.,]\d{1,20})(?:[eE][+-]?\d{1,3})?)\s*([A-Za-z"]*)$/

/**
 * Reads a table of component centres, in any form that has a column each for
 * reference, x and y; undefined where the text is no such table. Places stay in
 * the unit of the file. Errors: Unreadable with line and reason.
 */
export function readPlacement(text: string): PlacementFile | undefined {
  const table = textTable(text, (cells, separator) => {
    const columns = columnsIn(cells)
    if (!columns) return false
    return (separator !== 'a blank' && separator !== 'two blanks') || standsOverNumbers(text, cells, columns)
  })
  const columns = table && columnsIn(table.headings)
  if (!columns) return undefined
  if (table.lines.length > READ_LIMITS.placed)
    throw new Unreadable(`The file places more than ${READ_LIMITS.placed} components.`, 1)
  const unit = unitOf(table, columns)
  return { unit, rows: table.lines.map((line) => rowOf(line, columns, unit)) }
}

function standsOverNumbers(text: string, headings: readonly string[], { x, y }: Columns): boolean {
  const last = headings.length - 1
  return text
    .slice(0, STANDS_WITHIN)
    .split(/\r\n|\r|\n/)
    .some((line) => {
      const cells = line.trim().split(/\s+/)
      return cells.length > last && [x, y].every((at) => NUMBER.test(cells[at] ?? ''))
    })
}
const STANDS_WITHIN = 50_000

/** As the headings say it, else what stands before them, else the cells, where all say the same. */
function unitOf({ headings, before, lines }: TextTable, { x, y }: Columns): LengthUnit | undefined {
  const said = [x, y].map((at) => lengthUnitFrom(unitOfHeading(headings[at]!)))
  const stated = said[0] ?? said[1] ?? unitStatedIn(before)
  if (stated) return stated
  const first = lines[0] && NUMBER.exec(lines[0].cells[x]!)?.[2]
  return lengthUnitFrom(first)
}

function rowOf({ line, cells }: TableLine, columns: Columns, unit: LengthUnit | undefined): PlacementRow {
  const cell = (name: Name): string => {
    const at = columns[name]
    return at === undefined ? '' : cells[at]!
  }
  const reference = cell('reference').slice(0, READ_LIMITS.nameLength)
  if (reference === '') throw new Unreadable('The line names no component.', line)
  const length = (name: 'x' | 'y'): number => lengthIn(cell(name), name, { unit, line })
  const side = sideIn(cell('side'), line)
  const rotationDeg = angleIn(cell('rotation'), line)
  return {
    reference,
    at: [length('x'), length('y')],
    ...(rotationDeg !== undefined && { rotationDeg }),
    ...(side && { side }),
    ...(cell('value') !== '' && { value: cell('value') }),
    ...(cell('package') !== '' && { package: cell('package') }),
    line,
  }
}

interface Where {
  readonly unit: LengthUnit | undefined
  readonly line: number
}

/** A number in the unit of the file; one with a unit of its own is turned into it. */
function lengthIn(cell: string, name: 'x' | 'y', { unit, line }: Where): number {
  const [, digits, own = ''] = NUMBER.exec(cell) ?? []
  const value = digits === undefined ? Number.NaN : Number(digits.replace(',', '.'))
  const ownUnit = own === '"' ? 'inch' : lengthUnitFrom(own)
  if (!Number.isFinite(value) || (own !== '' && !ownUnit))
    throw new Unreadable(`“${cell.slice(0, 40)}” is no number for ${name}.`, line)
  if (ownUnit && !unit) throw new Unreadable('The unit stands in some lines only.', line)
  const length = ownUnit && unit ? (value * MM_OF[ownUnit]) / MM_OF[unit] : value
  if (Math.abs(length) * MM_OF[unit ?? 'mil'] > READ_LIMITS.reachMm)
    throw new Unreadable(
      `${name} lies beyond ${READ_LIMITS.reachMm / 1000} m of the origin: “${cell.slice(0, 40)}”.`,
      line,
    )
  return length
}

function sideIn(cell: string, line: number): 'top' | 'bottom' | undefined {
  if (cell === '') return undefined
  const side = sideFrom(cell)
  if (!side) throw new Unreadable(`“${cell.slice(0, 40)}” is no side of a board.`, line)
  return side
}

function angleIn(cell: string, line: number): number | undefined {
  if (cell === '') return undefined
  const [, digits, unit = ''] = NUMBER.exec(cell.replace(/°$/, '')) ?? []
  const angle = digits === undefined ? Number.NaN : Number(digits.replace(',', '.'))
  if (!Number.isFinite(angle) || !/^(deg|degrees?)?$/i.test(unit))
    throw new Unreadable(`“${cell.slice(0, 40)}” is no angle.`, line)
  return angle
}
