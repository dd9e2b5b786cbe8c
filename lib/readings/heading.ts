import type { ColumnMapping } from './column-mapping'
import { suggestMapping } from './column-mapping'
import { delimiterInWords, type Delimiter } from './delimiter'
import type { FileForm } from './file-form'
import { shortened, type ImportErrors } from './import-errors'
import { cellRule, type CellRule } from './read-cell'
import type { ReadingField } from './reading-field'

/** What a file's headings say about its columns. */
export type Heading = {
  /** How many columns there are. */
  readonly width: number
  readonly mapping: ColumnMapping
  readonly ignored: readonly string[]
  readonly columns: readonly HeadingColumn[]
}

/** One column that is read: where it stands and how. */
export type HeadingColumn = CellRule & {
  readonly name: string
  readonly index: number
  readonly heading: string
  readonly required: boolean
  /** Where its second half stands, which is read behind it. */
  readonly timeIndex?: number
}

/** Reads the line of headings; undefined, with the errors added, when a field that must be there is not. */
export function readHeading(
  cells: readonly string[],
  line: number,
  fields: readonly ReadingField[],
  form: FileForm,
  wanted: ColumnMapping | undefined,
  errors: ImportErrors,
): Heading | undefined {
  const { delimiter } = form
  const headings = withoutEmptyEnd(cells.map((cell) => cell.trim()))
  const mapping = wanted ?? suggestMapping(headings, fields)
  const before = errors.count
  const columns: HeadingColumn[] = []
  const times = new Map<string, { readonly index: number; readonly heading: string }>()
  for (const field of fields) {
    const heading = mapping[field.name]
    if (heading === undefined) {
      if (field.required) errors.add(line, missing(field, headings, delimiter))
      continue
    }
    const index = headings.indexOf(heading)
    if (index < 0) {
      errors.add(
        line,
        `there is no column "${shortened(heading)}" for ${field.label}. ${listed(headings, delimiter)}`,
      )
    } else if (headings.lastIndexOf(heading) !== index) {
      errors.add(
        line,
        `two columns are called "${shortened(heading)}"; ${field.label} can be read from one only. Rename one.`,
      )
    } else {
      if (field.kind === 'time of day') times.set(field.of, { index, heading })
      else
        columns.push({ ...cellRule(field, form), name: field.name, index, heading, required: field.required })
    }
  }
  if (errors.count > before) return undefined
  const used = new Set([...columns, ...times.values()].map(({ heading }) => heading))
  return {
    width: headings.length,
    mapping,
    ignored: headings.filter((heading) => !used.has(heading)),
    columns: columns.map((column) => {
      const time = times.get(column.name)
      return time ? { ...column, timeIndex: time.index } : column
    }),
  }
}

const missing = (field: ReadingField, headings: readonly string[], delimiter: Delimiter): string =>
  `no column was found for ${field.label}. ${listed(headings, delimiter)}`

const listed = (headings: readonly string[], delimiter: Delimiter): string =>
  `The columns, separated by ${delimiterInWords(delimiter)}, are: ${headings
    .slice(0, 20)
    .map((heading) => `"${shortened(heading)}"`)
    .join(', ')}.`

/** A separator at the end of the line makes no column. */
function withoutEmptyEnd(headings: readonly string[]): string[] {
  const last = headings.findLastIndex((heading) => heading !== '')
  return headings.slice(0, last + 1)
}
