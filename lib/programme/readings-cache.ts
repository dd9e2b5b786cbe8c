import { LRUCache } from 'lru-cache'
import type { PrismaClient } from '@/lib/db/generated/client'
import type { Transaction } from '@/lib/db/transaction'
import { groupedBy } from '@/shared/grouped-by'
import { joinReadings, NO_READINGS, type Readings } from '@/shared/records/readings'
import { sortedByTime } from '@/shared/records/time-order'

/** Readings by the test or log they belong to. */
export interface BatchReadings {
  readonly ofTest: (lotTestId: string) => Readings
  /** With a cut, of batches that are not the programme's own it answers what the cut leaves. */
  readonly ofLog: (logId: string, cut?: LogCut) => Readings
}

/** What of a shared log's readings counts for one programme. */
export interface LogCut {
  /** Whether the batches of that trail count whole. */
  readonly isOwn: (trailId: string) => boolean
  /** Names the cut: the same key means that the same readings are left. */
  readonly key: string
  readonly cut: (readings: Readings) => Readings
}

interface BatchRow {
  readonly id: string
  readonly trailId: string
  readonly lotTestId: string | null
  readonly logId: string | null
}

/** A cell is a number, or a text of a few letters that is mostly shared. */
const BYTES_A_CELL = 16
const sizeOf = ({ count, columns }: Readings): number =>
  1 + count * Object.keys(columns).length * BYTES_A_CELL
const keptUpTo = (megabytes: number) =>
  new LRUCache<string, Readings>({ maxSize: megabytes * 2 ** 20, sizeCalculation: sizeOf })

/** Batches are never changed once stored, so what was read stays right. */
const batches = keptUpTo(256)
const joined = keptUpTo(256)

/** Reads the batches not yet known, in one statement. */
export async function loadReadings(
  db: Pick<PrismaClient | Transaction, 'readingBatch'>,
  rows: readonly BatchRow[],
): Promise<BatchReadings> {
  // All of these are held until the programme is read, however many more than are kept they are.
  const held = new Map(rows.map(({ id }) => [id, batches.get(id)]))
  const unknown = rows.filter(({ id }) => !held.get(id)).map(({ id }) => id)
  if (unknown.length > 0) {
    const found = await db.readingBatch.findMany({
      where: { id: { in: unknown } },
      select: { id: true, readings: true },
    })
    for (const { id, readings } of found) {
      held.set(id, readings as unknown as Readings)
      batches.set(id, readings as unknown as Readings)
    }
  }
  const byTest = groupedBy(rows, ({ lotTestId }) => lotTestId)
  const byLog = groupedBy(rows, ({ logId }) => logId)
  return {
    ofTest: (id) => join(byTest.get(id) ?? [], held, '', joinReadings),
    ofLog: (id, cut) => joinLog(byLog.get(id) ?? [], held, cut),
  }
}

const inOrderOfTime = (all: readonly Readings[]): Readings => sortedByTime(joinReadings(all))

/** Of a log: its own batches whole, and of the others what the cut leaves. */
function joinLog(
  rows: readonly BatchRow[],
  held: ReadonlyMap<string, Readings | undefined>,
  cut: LogCut | undefined,
): Readings {
  const own = cut ? rows.filter(({ trailId }) => cut.isOwn(trailId)) : rows
  if (!cut || own.length === rows.length) return join(rows, held, '', inOrderOfTime)
  const others = rows.filter(({ trailId }) => !cut.isOwn(trailId))
  const key = own.length === 0 ? cut.key : `${cut.key}; whole: ${own.map(({ id }) => id).join()}`
  return join(rows, held, key, () => {
    const shared = cut.cut(join(others, held, '', inOrderOfTime))
    return own.length === 0 ? shared : inOrderOfTime([join(own, held, '', inOrderOfTime), shared])
  })
}

/** The same batches give the same object, which is what spares rules judging again. */
function join(
  rows: readonly BatchRow[],
  held: ReadonlyMap<string, Readings | undefined>,
  named: string,
  how: (all: readonly Readings[]) => Readings,
): Readings {
  if (rows.length === 0) return NO_READINGS
  const key = `${named}\n${rows.map(({ id }) => id).join()}`
  const known = joined.get(key)
  if (known) return known
  const readings = how(rows.map(({ id }) => held.get(id) ?? NO_READINGS))
  joined.set(key, readings)
  return readings
}
