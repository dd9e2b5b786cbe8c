/**
 * Readings column by column, as they are imported, stored and judged: every
 * column has `count` entries; an empty cell is null.
 */
export interface Readings {
  readonly count: number
  readonly columns: Readonly<Record<string, readonly (number | string | null)[]>>
}

export const NO_READINGS: Readings = { count: 0, columns: {} }

/** The numbers of one column, empty cells left out. */
export const numbersOf = (readings: Readings, column: string): number[] =>
  (readings.columns[column] ?? []).filter((cell): cell is number => typeof cell === 'number')

/** The texts of one column, empty cells left out. */
export const textsOf = (readings: Readings, column: string): string[] =>
  (readings.columns[column] ?? []).filter((cell): cell is string => typeof cell === 'string')

/** One after another; a column that one of them lacks is filled with nulls. */
export function joinReadings(batches: readonly Readings[]): Readings {
  if (batches.length === 1) return batches[0] ?? NO_READINGS
  const names = [...new Set(batches.flatMap((batch) => Object.keys(batch.columns)))]
  return {
    count: batches.reduce((sum, batch) => sum + batch.count, 0),
    columns: Object.fromEntries(
      names.map((name) => [
        name,
        batches.flatMap((batch) => batch.columns[name] ?? new Array<null>(batch.count).fill(null)),
      ]),
    ),
  }
}
