import { database } from '@/lib/db/client'
import { lotsRecordedBefore, type LotRecordedBefore } from '@/lib/programme/works/lots-recorded-before'
import { lotsInStore, type StoreLot } from '@/lib/programme/works/store-of-lots'
import { newestCorrections } from '@/lib/programme/works/newest-corrections'
import { programmesHolding } from '@/lib/queries/works/programmes-holding'
import { groupedBy } from '@/shared/grouped-by'
import { partKey } from '@/shared/records/lot-identity'
import type { RecordOf } from '@/shared/records/record-kinds'
import { inspectionSeries, type InspectionSeries } from '@/shared/sampling/inspection-series'

export interface SupplierRow {
  readonly code: string
  readonly closedAt: Date | null
  readonly lots: readonly StoreLot[]
}

/** Every supplier with its lots, by name. */
export async function readSuppliers(): Promise<SupplierRow[]> {
  const [suppliers, lots] = await Promise.all([
    database().supplier.findMany({ select: { code: true, closedAt: true }, orderBy: { code: 'asc' } }),
    lotsInStore(database()),
  ])
  const of = groupedBy(lots, ({ supplier }) => supplier)
  return suppliers.map((supplier) => ({ ...supplier, lots: of.get(supplier.code) ?? [] }))
}

/** A series of inspections as one programme specifies the sampling. */
export interface SeriesInProgramme extends InspectionSeries {
  readonly programme: string
}

export interface SupplierRead {
  readonly id: string
  readonly code: string
  readonly closed: { readonly at: Date; readonly why: string } | undefined
  readonly lots: readonly StoreLot[]
  /** Those that programmes recorded before the works kept them: the series of its parts runs over them too. */
  readonly recordedBefore: readonly LotRecordedBefore[]
  readonly series: readonly SeriesInProgramme[]
  /** What it did about rejected lots, as far as quality accepted it. */
  readonly actions: readonly RecordOf<'supplier-action'>[]
}

/** One supplier: its lots, how each part of it is inspected next, and what it did; undefined when there is none. */
export async function readSupplier(code: string): Promise<SupplierRead | undefined> {
  const db = database()
  const supplier = await db.supplier.findUnique({ where: { code } })
  if (!supplier) return undefined
  const ofSupplier = { trailId: supplier.id }
  const [lots, recordedBefore, judged, records] = await Promise.all([
    lotsInStore(db, ofSupplier),
    lotsRecordedBefore(db, supplier.code),
    programmesHolding(ofSupplier),
    db.record.findMany({
      where: { ...ofSupplier, kind: 'supplier-action', withdrawnAt: null },
      orderBy: [{ at: 'asc' }, { id: 'asc' }],
    }),
  ])
  const corrected = await newestCorrections(
    db,
    records.map(({ id }) => id),
  )
  return {
    id: supplier.id,
    code: supplier.code,
    closed: supplier.closedAt ? { at: supplier.closedAt, why: supplier.closedWhy ?? '' } : undefined,
    lots,
    recordedBefore,
    series: judged.flatMap(({ state }) =>
      inspectionSeries(state.facts)
        .filter((series) => partKey(series.supplier) === partKey(supplier.code))
        .map((series) => ({ ...series, programme: state.programme.code })),
    ),
    actions: records.map(
      ({ id, data }) =>
        ({ ...(corrected.get(id) ?? (data as object)), id }) as unknown as RecordOf<'supplier-action'>,
    ),
  }
}
