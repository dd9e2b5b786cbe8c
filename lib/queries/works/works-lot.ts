import { database } from '@/lib/db/client'
import type { JudgedProgramme } from '@/lib/programme/judged'
import { correctedBy, newestCorrections } from '@/lib/programme/works/newest-corrections'
import { loadReadings } from '@/lib/programme/readings-cache'
import { lotOf } from '@/lib/programme/rows'
import { lotsInStore, type StoreLot } from '@/lib/programme/works/store-of-lots'
import { correctionsOf } from '@/lib/queries/corrections'
import { earlierLots } from '@/lib/queries/works/earlier-lots'
import { programmesHolding } from '@/lib/queries/works/programmes-holding'
import type { Instrument } from '@/shared/records/instrument'
import type { Lot } from '@/shared/records/lot'
import type { Correction } from '@/shared/records/correction'

/** One lot of the works, with all that is known of it anywhere. */
export interface WorksLotRead {
  readonly supplier: { readonly id: string; readonly code: string }
  /** As its supplier's trail tells of it; its uses are in `uses`. */
  readonly lot: Lot
  /** The newest deliveries of its part before it, oldest first. */
  readonly earlier: readonly Lot[]
  readonly store: StoreLot
  readonly uses: readonly { readonly programme: string; readonly assemblies: readonly string[] }[]
  /** The programmes that hold or used some of it. */
  readonly judged: readonly JudgedProgramme[]
  readonly instruments: readonly Instrument[]
  /** Of the lot and of its tests, by id. */
  readonly corrections: ReadonlyMap<string, readonly Correction[]>
}

/** Which lot an address names. */
export interface WorksLotFound {
  readonly supplierId: string
  readonly supplier: string
  readonly lot: string
}

/** Undefined when the supplier delivered no such lot. */
export async function findWorksLot(supplier: string, code: string): Promise<WorksLotFound | undefined> {
  const row = await database().lot.findFirst({
    where: { code, subject: { kind: 'supplier', code: supplier } },
    select: { trailId: true },
  })
  return row ? { supplierId: row.trailId, supplier, lot: code } : undefined
}

/** Undefined when the supplier delivered no such lot. */
export async function readWorksLot(supplier: string, code: string): Promise<WorksLotRead | undefined> {
  const db = database()
  const row = await db.lot.findFirst({
    where: { code, subject: { kind: 'supplier', code: supplier } },
    include: {
      subject: { select: { id: true, code: true } },
      tests: { where: { withdrawnAt: null }, orderBy: [{ at: 'asc' }, { id: 'asc' }] },
      uses: {
        include: { programme: { select: { code: true } } },
        orderBy: [{ at: 'asc' }, { id: 'asc' }],
      },
    },
  })
  if (!row) return undefined
  const ids = [row.id, ...row.tests.map(({ id }) => id)]
  const [[store], corrected, corrections, batches, judged, instruments] = await Promise.all([
    lotsInStore(db, { id: row.id }),
    newestCorrections(db, ids),
    correctionsOf(ids),
    db.readingBatch.findMany({
      where: { lotTestId: { in: ids } },
      select: { id: true, trailId: true, lotTestId: true, logId: true },
      orderBy: [{ at: 'asc' }, { id: 'asc' }],
    }),
    programmesHolding({ id: row.id }),
    db.instrument.findMany({ orderBy: { tag: 'asc' } }),
  ])
  const { tests, uses, subject, ...noted } = row
  const asCorrected = correctedBy(corrected)
  const lot = lotOf(asCorrected(noted), tests.map(asCorrected), await loadReadings(db, batches))
  return {
    supplier: subject,
    lot,
    earlier: await earlierLots(db, lot, subject.id),
    store: store!,
    uses: uses.map(({ programme, assemblies }) => ({ programme: programme.code, assemblies })),
    judged,
    instruments,
    corrections,
  }
}
