import type { PrismaClient } from '@/lib/db/generated/client'
import { loadReadings } from '@/lib/programme/readings-cache'
import { lotOf } from '@/lib/programme/rows'
import { correctedBy, newestCorrections } from '@/lib/programme/works/newest-corrections'
import { groupedBy } from '@/shared/grouped-by'
import { earlierDeliveries } from '@/shared/records/lot-identity'
import type { Lot } from '@/shared/records/lot'
import { NO_READINGS } from '@/shared/records/readings'

const IN_ORDER = [{ at: 'asc' as const }, { id: 'asc' as const }]

/** The newest lots that a supplier delivered of the same part before this one, with their tests, as corrected, oldest first. */
export async function earlierLots(db: PrismaClient, lot: Lot, supplierId: string): Promise<Lot[]> {
  const delivered = await asCorrected(db, await db.lot.findMany({ where: { trailId: supplierId } }))
  const identified = delivered.map((row) =>
    lotOf(row, [], { ofTest: () => NO_READINGS, ofLog: () => NO_READINGS }),
  )
  const before = earlierDeliveries(lot, identified)
  const rows = await asCorrected(
    db,
    await db.lotTest.findMany({
      where: { lotId: { in: before.map(({ id }) => id) }, withdrawnAt: null },
      orderBy: IN_ORDER,
    }),
  )
  const batches = await db.readingBatch.findMany({
    where: { lotTestId: { in: rows.map(({ id }) => id) } },
    select: { id: true, trailId: true, lotTestId: true, logId: true },
    orderBy: IN_ORDER,
  })
  const [readings, tests] = [await loadReadings(db, batches), groupedBy(rows, ({ lotId }) => lotId)]
  return before.map((one) =>
    lotOf(
      delivered.find(({ id }) => id === one.id)!,
      tests.get(one.id) ?? [],
      readings,
    ),
  )
}

async function asCorrected<Row extends { readonly id: string }>(
  db: PrismaClient,
  rows: readonly Row[],
): Promise<Row[]> {
  const ids = rows.map(({ id }) => id)
  return rows.map(correctedBy(await newestCorrections(db, ids)))
}
