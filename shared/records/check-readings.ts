import { formatNumber } from '@/shared/quantity/format'
import type { Column } from '@/shared/columns/column'
import { kindOf } from '@/shared/columns/column-kinds'
import { columnSchema } from '@/shared/columns/column-schema'
import type { Readings } from './readings'

/** A cell that cannot be taken: which reading (from 1), which column, and why. */
export interface ReadingProblem {
  readonly reading: number
  readonly column: string
  readonly message: string
}

const MAX_LISTED = 50
/** An analysis measures each metal apart, so that its shares may come to a little more than the whole. */
const MAX_TOGETHER_PCT = 101

/**
 * What is wrong with readings for these columns, of which some may be shares of one whole; empty when all can be
 * taken. Stops after fifty.
 */
export function readingProblems(
  readings: Readings,
  columns: Readonly<Record<string, Column>>,
  sharesOfWhole: readonly string[] = [],
): ReadingProblem[] {
  const problems = overWhole(readings, sharesOfWhole)
  for (const name of Object.keys(readings.columns)) {
    if (!Object.hasOwn(columns, name))
      problems.push({ reading: 0, column: name, message: `There is no column ${name}.` })
  }
  for (const [name, column] of Object.entries(columns)) {
    const cells = readings.columns[name] ?? []
    if (cells.length !== readings.count && !(cells.length === 0 && column.optional)) {
      problems.push({
        reading: 0,
        column: name,
        message: `${column.label}: ${readings.count} readings, but ${cells.length} values.`,
      })
      continue
    }
    const fits = kindOf(column).readingTest(column)
    for (let index = 0; index < cells.length && problems.length < MAX_LISTED; index++) {
      const cell = cells[index] ?? null
      if (cell === null ? !column.optional : !fits(cell))
        problems.push({ reading: index + 1, column: name, message: sayWhy(column, cell) })
    }
  }
  return problems.slice(0, MAX_LISTED)
}

function overWhole({ count, columns }: Readings, shares: readonly string[]): ReadingProblem[] {
  const [column] = shares
  if (column === undefined) return []
  return Array.from({ length: count }, (_, index) => ({
    reading: index + 1,
    column,
    together: shares.reduce((sum, share) => sum + (Number(columns[share]?.[index]) || 0), 0),
  })).flatMap(({ together, ...place }) =>
    together > MAX_TOGETHER_PCT
      ? [{ ...place, message: `The shares come to ${formatNumber(together, 4)} %, more than the whole.` }]
      : [],
  )
}

function sayWhy(column: Column, cell: number | string | null): string {
  if (cell === null) return `${column.label} must be filled in.`
  const parsed = columnSchema(column).safeParse(cell)
  return parsed.error?.issues[0]?.message ?? `${column.label} cannot be ${cell}.`
}
