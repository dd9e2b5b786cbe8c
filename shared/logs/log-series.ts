import type { Log } from '@/shared/records/log'
import { memo } from '@/shared/memo'
import type { Clock } from './log-day'

/** Readings in time order: instants in epoch milliseconds. */
export interface Series {
  /** By whose clock its days are told; UTC where it is not said. */
  readonly log?: Clock
  readonly instants: readonly number[]
  readonly values: readonly number[]
}

/** The readings of one log that hold a value. */
export interface LogSeries extends Series {
  readonly log: Log
  /** Where each value stands among the log's readings. */
  readonly rows: readonly number[]
}

/** A number as it was read; NaN where the cell is empty. */
export function cellAt(log: Log, column: string, row: number | undefined): number {
  const cell = row === undefined ? undefined : log.readings.columns[column]?.[row]
  return typeof cell === 'number' ? cell : Number.NaN
}

/**
 * One value a reading, made from the columns the reading holds; readings
 * without a value (an empty cell, a value that is no number) are left out.
 */
export function seriesFrom(
  log: Log,
  valueAt: (cell: (column: string) => number | undefined) => number | undefined,
): LogSeries {
  const { count, columns } = log.readings
  const instants: number[] = []
  const values: number[] = []
  const rows: number[] = []
  let row = 0
  const cell = (column: string): number | undefined => {
    const found = columns[column]?.[row]
    return typeof found === 'number' ? found : undefined
  }
  for (; row < count; row++) {
    const at = cell('at')
    const value = valueAt(cell)
    if (at === undefined || value === undefined || !Number.isFinite(value)) continue
    instants.push(at)
    values.push(value)
    rows.push(row)
  }
  return { log, instants, values, rows }
}

/** The series of one column as it was read. */
export const columnSeries = memo((log: Log, column: string) => seriesFrom(log, (cell) => cell(column)))
