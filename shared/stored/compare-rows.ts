import type { BreakList } from './break-list'
import { coveredTable, type TableName } from './covered-tables'
import { keyTextOf, type ExpectedRow, type ExpectedRows } from './expected-rows'
import type { ColumnDifference, RowShown, StoredBreak } from './stored-break'

/** A row as the database has it: a value for each covered column of its table. */
export type StoredRow = Readonly<Record<string, unknown>>

/** How many rows were compared, and of how many no entry says all that is in them. */
export interface RowCount {
  compared: number
  /** Written before their content was in the entries, or hashed there. */
  unhashed: number
}

/** Compares some stored rows of a table with what the entries say of them. */
export function compareRows(
  table: TableName,
  stored: readonly StoredRow[],
  expected: ExpectedRows,
  count: RowCount,
  breaks: BreakList<StoredBreak>,
): void {
  const { columns } = coveredTable(table)
  for (const row of stored) {
    count.compared += 1
    const texts = columns.map((column) => expected.textOf(table, column, row[column]))
    const recorded = expectedOf(table, texts, expected)
    if (!recorded) {
      breaks.add({ kind: 'unrecorded', table, row: shown(table, texts) })
      continue
    }
    recorded.found = true
    if (isPartlyKnown(table, recorded)) count.unhashed += 1
    const differences = differencesOf(columns, recorded.values, texts)
    if (differences.length > 0)
      breaks.add({
        kind: 'changed',
        table,
        row: shown(table, recorded.values),
        seq: recorded.seq,
        differences,
      })
  }
}

/** The rows that entries made and that were not among the stored ones. Call when all of those were compared. */
export function missingRows(table: TableName, expected: ExpectedRows, breaks: BreakList<StoredBreak>): void {
  const { byKey, older } = expected.table(table)
  for (const rows of [byKey.values(), ...older.values()]) {
    for (const { found, seq, values } of rows) {
      if (!found) breaks.add({ kind: 'missing', table, row: shown(table, values), seq })
    }
  }
}

/** By its key; where older entries did not give that, by what else names it, the likest of several first. */
function expectedOf(
  table: TableName,
  texts: readonly string[],
  expected: ExpectedRows,
): ExpectedRow | undefined {
  const { key, keyOfOlder, columns } = coveredTable(table)
  const { byKey, older, unlisted } = expected.table(table)
  const byItsKey = byKey.get(keyTextOf(table, key, texts) ?? '')
  if (byItsKey) return byItsKey
  const waiting = (keyOfOlder && older.get(keyTextOf(table, keyOfOlder, texts) ?? '')) ?? []
  const free = waiting.filter(({ found }) => !found)
  const named = free.find(({ values }) => differencesOf(columns, values, texts).length === 0) ?? free[0]
  return named ?? (unlisted && { seq: 1, values: [...unlisted], found: false })
}

function differencesOf(
  columns: readonly string[],
  recorded: readonly (string | undefined)[],
  stored: readonly string[],
): ColumnDifference[] {
  return columns.flatMap((column, position) => {
    const [says, stands] = [recorded[position], stored[position] ?? '']
    return says === undefined || says === stands ? [] : [{ column, recorded: says, stored: stands }]
  })
}

/** A key that an older entry does not give is no content; any other column that no entry says is. */
function isPartlyKnown(table: TableName, { values }: ExpectedRow): boolean {
  const { columns, key } = coveredTable(table)
  return columns.some((column, position) => values[position] === undefined && !key.includes(column))
}

function shown(table: TableName, texts: readonly (string | undefined)[]): RowShown {
  const { columns, shows } = coveredTable(table)
  return Object.fromEntries(
    shows.flatMap((column) => {
      const text = texts[columns.indexOf(column)]
      return text === undefined || text === 'null' ? [] : [[column, text]]
    }),
  )
}
