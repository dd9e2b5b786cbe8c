import type { Readings } from './readings'

type Cell = number | string | boolean | undefined

/** Readings given one by one, as they are stored: column by column, yes and no in words, an empty cell null. */
export function readingsFromRows(rows: readonly Readonly<Record<string, Cell>>[]): Readings {
  const names = [...new Set(rows.flatMap((row) => Object.keys(row)))]
  return {
    count: rows.length,
    columns: Object.fromEntries(names.map((name) => [name, rows.map((row) => stored(row[name]))])),
  }
}

const stored = (cell: Cell): number | string | null =>
  typeof cell === 'boolean' ? (cell ? 'yes' : 'no') : (cell ?? null)
