import type { Readings } from '@/shared/records/readings'

/** A repeatable scatter: the demo's readings are the same on every machine. Park and Miller's generator. */
export function scatterFrom(start: number): () => number {
  let state = start
  const uniform = () => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform())
}

/** Rows turned into columns, as readings are imported. */
export function readingsOf(rows: readonly Readonly<Record<string, number | string | null>>[]): Readings {
  const names = [...new Set(rows.flatMap((row) => Object.keys(row)))]
  return {
    count: rows.length,
    columns: Object.fromEntries(names.map((name) => [name, rows.map((row) => row[name] ?? null)])),
  }
}

/** The same rows as the CSV file they would have come from. */
export function csvOf(rows: readonly Readonly<Record<string, number | string | null>>[]): string {
  const names = Object.keys(rows[0] ?? {})
  return (
    [names.join(','), ...rows.map((row) => names.map((name) => row[name] ?? '').join(','))].join('\n') + '\n'
  )
}

export const rounded = (value: number, decimals: number): number => Number(value.toFixed(decimals))
