import type { Log } from '@/shared/records/log'
import { groupedBy } from '@/shared/grouped-by'

/** The rows of a log's readings by a column of text (an iron, a serial number), in time order. */
export function rowsByText(log: Log, column: string): ReadonlyMap<string, readonly number[]> {
  const cells = log.readings.columns[column] ?? []
  const named = Array.from({ length: log.readings.count }, (_, row) => row).flatMap((row) => {
    const cell = cells[row]
    return typeof cell === 'string' && cell.trim() !== '' ? [{ row, text: cell.trim() }] : []
  })
  return groupedBy(
    named,
    ({ text }) => text,
    ({ row }) => row,
  )
}
