import type { ColumnMapping } from './column-mapping'
import type { FileForm } from './file-form'
import { readHeading, type Heading, type HeadingColumn } from './heading'
import type { ImportErrors } from './import-errors'
import type { ReadingField } from './reading-field'

/** A column that is read, and what it holds so far. */
type Target = HeadingColumn & { readonly values: (number | string | null)[] }

/** Takes records one by one: first the headings, then readings into columns. */
export class ReadingTable {
  heading: Heading | undefined
  /** Set when nothing that follows could be read. */
  isHopeless = false
  rows = 0
  private targets: readonly Target[] = []

  constructor(
    readonly form: FileForm,
    private readonly fields: readonly ReadingField[],
    private readonly wanted: ColumnMapping | undefined,
    private readonly errors: ImportErrors,
    private readonly maxRows: number,
  ) {}

  readonly take = (cells: readonly string[], line: number): void => {
    if (this.isHopeless || isBlank(cells)) return
    if (!this.heading) return this.takeFirst(cells, line)
    if (this.rows >= this.maxRows)
      return this.giveUp(line, `more than ${this.maxRows} readings. Import them in several files.`)
    this.rows += 1
    if (this.hasRightLength(cells, line)) this.takeReading(cells, line)
  }

  columns(): Record<string, readonly (number | string | null)[]> {
    return Object.fromEntries(this.targets.map(({ name, values }) => [name, values]))
  }

  /** The headings; when the line that should hold them was faulty, a reading is not taken for them. */
  private takeFirst(cells: readonly string[], line: number): void {
    const heading =
      this.errors.count === 0 && readHeading(cells, line, this.fields, this.form, this.wanted, this.errors)
    if (!heading) {
      this.isHopeless = true
      return
    }
    this.heading = heading
    this.targets = heading.columns.map((column) => ({ ...column, values: [] }))
  }

  /** A separator too many at the end of a line is harmless; any other difference shifts the values. */
  private hasRightLength(cells: readonly string[], line: number): boolean {
    const wanted = this.heading!.width
    if (cells.length === wanted) return true
    if (cells.length > wanted && cells.slice(wanted).every((cell) => cell.trim() === '')) return true
    const values = cells.length === 1 ? '1 value' : `${cells.length} values`
    this.errors.add(
      line,
      `${values}, but there are ${wanted} headings.${this.commaHint(cells.length > wanted)}`,
    )
    return false
  }

  private commaHint(isTooLong: boolean): string {
    return isTooLong && this.form.delimiter === ','
      ? ' If numbers have a decimal comma, separate the columns by semicolons.'
      : ''
  }

  private takeReading(cells: readonly string[], line: number): void {
    for (const target of this.targets) {
      const text = textOf(target, cells)
      const value = text === '' ? (target.required ? undefined : null) : target.read(text)
      if (value === undefined) {
        this.errors.addCell(
          line,
          target.index + 1,
          target.heading,
          text,
          target.why?.(text) ?? target.expected,
        )
      } else {
        target.values.push(value)
      }
    }
  }

  private giveUp(line: number, message: string): void {
    this.isHopeless = true
    this.errors.add(line, message)
  }
}

/** The cell, with that of its time of day behind it where that has a column of its own. */
function textOf({ index, timeIndex }: Target, cells: readonly string[]): string {
  const text = cells[index]!.trim()
  return timeIndex === undefined ? text : `${text} ${cells[timeIndex]!.trim()}`.trim()
}

const isBlank = (cells: readonly string[]): boolean =>
  cells[0]!.trim() === '' && cells.every((cell) => cell.trim() === '')
