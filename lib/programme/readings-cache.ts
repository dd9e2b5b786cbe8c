import type { PrismaClient } from '@/lib/db/generated/client'
import type { Transaction } from '@/lib/db/transaction'
import { joinReadings, NO_READINGS, type Readings } from '@/shared/records/readings'
import { sortedByTime } from '@/shared/records/time-order'

/** Readings by the test or log they belong to. */
export interface BatchReadings {
  readonly ofTest: (lotTestId: string) => Readings
  readonly ofLog: (logId: string) => Readings
}

interface BatchRow {
  readonly id: string
  readonly lotTestId: string | null
  readonly logId: string | null
}

/** Batches are never changed once stored, so what was read stays right; the oldest go when there are too many. */
const MOST_KEPT_READINGS = 2_000_000
const batches = new Map<string, Readings>()
const joined = new Map<string, Readings>()
let keptReadings = 0

/** Reads the batches not yet known, in one statement. */
export async function loadReadings(
  db: PrismaClient | Transaction,
  rows: readonly BatchRow[],
): Promise<BatchReadings> {
  const unknown = rows.filter(({ id }) => !batches.has(id)).map(({ id }) => id)
  if (unknown.length > 0) {
    const found = await db.readingBatch.findMany({
      where: { id: { in: unknown } },
      select: { id: true, readings: true },
    })
    for (const { id, readings } of found) keep(id, readings as unknown as Readings)
  }
  const byTest = grouped(rows, ({ lotTestId }) => lotTestId)
  const byLog = grouped(rows, ({ logId }) => logId)
  const result = {
    ofTest: (id: string) => join(byTest.get(id) ?? [], joinReadings),
    ofLog: (id: string) => join(byLog.get(id) ?? [], (all) => sortedByTime(joinReadings(all))),
  }
  return result
}

/** The same batches give the same object, which is what spares rules judging again. */
function join(ids: readonly string[], how: (all: readonly Readings[]) => Readings): Readings {
  if (ids.length === 0) return NO_READINGS
  const key = ids.join()
  const known = joined.get(key)
  if (known) return known
  const readings = how(ids.map((id) => batches.get(id) ?? NO_READINGS))
  if (joined.size > 2_000) joined.clear()
  joined.set(key, readings)
  return readings
}

function keep(id: string, readings: Readings): void {
  batches.set(id, readings)
  keptReadings += readings.count
  if (keptReadings <= MOST_KEPT_READINGS) return
  for (const [oldest, { count }] of batches) {
    if (oldest === id || keptReadings <= MOST_KEPT_READINGS) break
    batches.delete(oldest)
    keptReadings -= count
  }
}

function grouped(rows: readonly BatchRow[], by: (row: BatchRow) => string | null): Map<string, string[]> {
  const groups = new Map<string, string[]>()
  for (const row of rows) {
    const key = by(row)
    if (key) groups.set(key, [...(groups.get(key) ?? []), row.id])
  }
  return groups
}
