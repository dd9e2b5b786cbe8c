import type { RowReader } from '@/lib/db/row-reader'
import type { StoredRow } from '@/shared/stored/compare-rows'
import { coveredTable, type TableName } from '@/shared/stored/covered-tables'
import { readingsAsCompared } from '@/shared/stored/writes/reading-writes'

/** A gate's cover may be some hundred kilobytes. */
const ROWS_AT_ONCE = 200

/**
 * The rows of a table of which a trail's entries speak, or all of them, in pages by the table's key.
 * Readings are hashed by the database: a batch may hold a million.
 */
export async function* storedRows(
  reader: RowReader,
  table: TableName,
  trailId: string | undefined,
): AsyncGenerator<StoredRow[]> {
  const { key, columns, owner } = coveredTable(table)
  const keys = key.map(quoted).join(', ')
  const selected = columns.map((column) => EXPRESSIONS[`${table}.${column}`] ?? quoted(column)).join(', ')
  let after: readonly unknown[] = []
  for (;;) {
    const parameters: unknown[] = []
    const place = (value: unknown): string => `$${parameters.push(value)}`
    const conditions = [
      ...(owner ? [`${quoted(owner)} = ${place(trailId)}`] : []),
      ...(after.length > 0 ? [`(${keys}) > (${after.map(place).join(', ')})`] : []),
    ]
    const where = conditions.length > 0 ? `WHERE ${conditions.join(' AND ')}` : ''
    const rows = await reader.rows<StoredRow>(
      `SELECT ${selected} FROM ${quoted(table)} ${where} ORDER BY ${keys} LIMIT ${place(ROWS_AT_ONCE)}`,
      parameters,
    )
    const last = rows.at(-1)
    if (!last) return
    yield table === 'ReadingBatch' ? rows.map(withReadingsHashed) : rows
    if (rows.length < ROWS_AT_ONCE) return
    after = key.map((column) => last[column])
  }
}

const quoted = (name: string): string => `"${name}"`

/** How columns are read that are not compared as they stand. Type json keeps a text as it was written, and so its hash. */
const EXPRESSIONS: Readonly<Record<string, string>> = {
  // A list without members may be stored as NULL.
  'Lot.usedIn': `coalesce("usedIn", '{}') AS "usedIn"`,
  'LotUse.assemblies': `coalesce("assemblies", '{}') AS "assemblies"`,
  'ReadingBatch.readings': `CASE WHEN json_typeof("readings") = 'object' THEN json_build_object(
      'members', (SELECT json_agg(member) FROM json_object_keys("readings") AS member),
      'count', "readings"->'count',
      'columnsSha256', encode(sha256(convert_to(("readings"->'columns')::text, 'UTF8')), 'hex'))
    END AS "readings"`,
}

interface HashedReadings {
  readonly members: readonly string[] | null
  readonly count: number
  readonly columnsSha256: string
}

/** Readings with any member beside the two that are recorded are compared as they stand, and so differ. */
function withReadingsHashed(row: StoredRow): StoredRow {
  const hashed = row['readings'] as HashedReadings | null
  const asWritten = hashed?.members?.join() === 'count,columns'
  return {
    ...row,
    readings: hashed && asWritten ? readingsAsCompared(hashed.count, hashed.columnsSha256) : hashed,
  }
}
