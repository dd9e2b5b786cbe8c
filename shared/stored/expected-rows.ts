import type { JsonValue } from '@/shared/trail/canonical-json'
import type { Sha256 } from '@/shared/trail/sha256'
import { coveredTable, type ColumnOf, type TableName } from './covered-tables'
import { keptText } from './kept-text'

/** A row as the entries say it should stand. */
export interface ExpectedRow {
  /** The newest entry that wrote it. */
  seq: number
  /** By position in the table's columns; undefined where no entry says. */
  readonly values: (string | undefined)[]
  /** Set once a stored row was found for it. */
  found: boolean
}

/** Columns with the values an entry gives; a value left undefined is one the entry does not say. */
export type Written<Table extends TableName> = Readonly<
  Partial<Record<ColumnOf<Table>, JsonValue | undefined>>
>

/** What a trail's entries, taken in order, say of one table's rows. */
export interface ExpectedTable {
  readonly byKey: Map<string, ExpectedRow>
  /** Rows of which the entry does not give the key, by what else names them. */
  readonly older: Map<string, ExpectedRow[]>
  readonly byName: Map<string, ExpectedRow>
  /** What is known of rows that were made without any entry naming them. */
  unlisted: readonly (string | undefined)[] | undefined
}

/** A stored file as the entries that name it describe it. */
export interface NamedFile {
  readonly seq: number
  /** Undefined where no entry says. */
  readonly size: JsonValue | undefined
  readonly mediaType: JsonValue | undefined
}

/** An entry speaks of a row that no entry before it made. */
export class NoSuchRow extends Error {
  override readonly name = 'NoSuchRow'
}

/** The rows that a trail's entries make, change and remove. */
export class ExpectedRows {
  private readonly tables = new Map<TableName, ExpectedTable>()
  /** Files that the entries name, by their SHA-256. */
  readonly files = new Map<string, NamedFile>()
  /** The entry that speaks. */
  seq = 0

  constructor(private readonly sha256: Sha256) {}

  /** A new row. Columns that the entry does not say stay unknown and are not compared. */
  insert<Table extends TableName>(table: Table, written: Written<Table>): void {
    const { key, keyOfOlder, named } = coveredTable(table)
    const expected = this.table(table)
    const row: ExpectedRow = { seq: this.seq, values: this.valuesOf(table, written), found: false }
    const keyText = keyTextOf(table, key, row.values)
    if (keyText !== undefined) expected.byKey.set(keyText, row)
    else {
      const older = keyOfOlder && keyTextOf(table, keyOfOlder, row.values)
      if (older === undefined) throw new NoSuchRow(table)
      expected.older.set(older, [...(expected.older.get(older) ?? []), row])
    }
    const name = named && keyTextOf(table, [named], row.values)
    if (name !== undefined) expected.byName.set(name, row)
  }

  /** Some columns of the row that `where` names, by its key or by its name. */
  change<Table extends TableName>(table: Table, where: Written<Table>, written: Written<Table>): void {
    const row = this.rowAt(table, where)
    row.seq = this.seq
    for (const [position, text] of this.valuesOf(table, written).entries())
      if (text !== undefined) row.values[position] = text
  }

  /** What the entry changed without saying to what: not compared until another entry says. */
  forget<Table extends TableName>(table: Table, where: Written<Table>, column: ColumnOf<Table>): void {
    this.rowAt(table, where).values[positionOf(table, column)] = undefined
  }

  /** The row is gone. */
  remove<Table extends TableName>(table: Table, where: Written<Table>): void {
    this.rowAt(table, where)
    const { key } = coveredTable(table)
    this.table(table).byKey.delete(keyTextOf(table, key, this.valuesOf(table, where)) ?? '')
  }

  /** A column that the next entry builds upon, as it stands; undefined where no entry says. */
  valueOf<Table extends TableName>(
    table: Table,
    where: Written<Table>,
    column: ColumnOf<Table>,
  ): JsonValue | undefined {
    const text = this.rowAt(table, where).values[positionOf(table, column)]
    return text === undefined ? undefined : (JSON.parse(text) as JsonValue)
  }

  /** Rows of this table may stand that no entry names; of them only these columns are known. */
  mayBeUnlisted<Table extends TableName>(table: Table, known: Written<Table>): void {
    this.table(table).unlisted = this.valuesOf(table, known)
  }

  /** A stored file that the entry names; nothing where it names none. */
  nameFile(
    sha256: JsonValue | undefined,
    size: JsonValue | undefined,
    mediaType: JsonValue | undefined,
  ): void {
    if (typeof sha256 !== 'string') return
    const before = this.files.get(sha256)
    this.files.set(sha256, {
      seq: before?.seq ?? this.seq,
      size: size ?? before?.size,
      mediaType: mediaType ?? before?.mediaType,
    })
  }

  /** What is expected of a table, to be compared with what is stored. */
  table(table: TableName): ExpectedTable {
    const known = this.tables.get(table)
    if (known) return known
    const fresh = { byKey: new Map(), older: new Map(), byName: new Map(), unlisted: undefined }
    this.tables.set(table, fresh)
    return fresh
  }

  private rowAt(table: TableName, where: Readonly<Record<string, JsonValue | undefined>>): ExpectedRow {
    const { key, named } = coveredTable(table)
    const expected = this.table(table)
    const values = this.valuesOf(table, where)
    const keyText = keyTextOf(table, key, values)
    const name = named && keyTextOf(table, [named], values)
    const row =
      (keyText === undefined ? undefined : expected.byKey.get(keyText)) ??
      (name === undefined ? undefined : expected.byName.get(name))
    if (row) return row
    if (!expected.unlisted || keyText === undefined) throw new NoSuchRow(table)
    const unlisted = { seq: this.seq, values: [...expected.unlisted], found: false }
    for (const [position, text] of values.entries()) unlisted.values[position] ??= text
    expected.byKey.set(keyText, unlisted)
    return unlisted
  }

  private valuesOf(
    table: TableName,
    written: Readonly<Record<string, JsonValue | undefined>>,
  ): (string | undefined)[] {
    const { columns } = coveredTable(table)
    return columns.map((column) => {
      const value = written[column]
      return value === undefined ? undefined : this.textOf(table, column, value)
    })
  }

  /** A column's value as the text it is compared by. */
  textOf(table: TableName, column: string, value: unknown): string {
    const isWhole = coveredTable(table).builtUpon?.includes(column)
    return keptText(value, this.sha256, isWhole ? Infinity : undefined)
  }
}

/** The values of some columns as one text; undefined when one of them is unknown. */
export function keyTextOf(
  table: TableName,
  columns: readonly string[],
  values: readonly (string | undefined)[],
): string | undefined {
  const parts = columns.map((column) => values[positionOf(table, column)])
  return parts.includes(undefined) ? undefined : parts.join(' ')
}

export const positionOf = (table: TableName, column: string): number =>
  coveredTable(table).columns.indexOf(column)
