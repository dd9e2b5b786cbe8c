import type { Readings } from './readings'

/** The same readings in order of their `at` column (epoch ms); the order of equal times is kept. */
export function sortedByTime(readings: Readings): Readings {
  const at = (readings.columns['at'] ?? []) as readonly number[]
  if (isAscending(at)) return readings
  const order = Array.from(at.keys()).sort((a, b) => (at[a] ?? 0) - (at[b] ?? 0))
  return {
    count: readings.count,
    columns: Object.fromEntries(
      Object.entries(readings.columns).map(([name, cells]) => [
        name,
        order.map((index) => cells[index] ?? null),
      ]),
    ),
  }
}

const isAscending = (times: readonly number[]): boolean =>
  times.every((time, index) => index === 0 || time >= (times[index - 1] ?? 0))
