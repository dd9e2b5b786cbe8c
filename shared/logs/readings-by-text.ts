import type { Log } from '@/shared/records/log'

/** The rows of a log's readings by a column of text (an iron, a serial number), in time order. */
export function rowsByText(log: Log, column: string): ReadonlyMap<string, readonly number[]> {
  const byText = new Map<string, number[]>()
  const cells = log.readings.columns[column] ?? []
  for (let row = 0; row < log.readings.count; row++) {
    const cell = cells[row]
    const text = typeof cell === 'string' && cell.trim() !== '' ? cell.trim() : undefined
    if (text === undefined) continue
    const rows = byText.get(text)
    if (rows) rows.push(row)
    else byText.set(text, [row])
  }
  return byText
}
