import type { BatchReadings } from '@/lib/programme/readings-cache'
import { lotOf } from '@/lib/programme/rows'
import type { LotRows, LotWithSubject, OwnLot } from '@/lib/programme/works/shared-lots'
import { groupedBy } from '@/shared/grouped-by'
import type { Lot } from '@/shared/records/lot'
import { deliveryKey } from '@/shared/records/lot-identity'
import { lotNames } from '@/shared/works/lot-name'

/** Lots as a programme reads them: those that speak for it, and the other deliveries of the same suppliers and parts. */
export interface LotsRead {
  readonly lots: readonly Lot[]
  readonly deliveries: readonly Lot[]
}

/** A lot of its own it reads under the name it has there, with its own uses; of others the series of inspections alone. */
export function lotsOfProgramme(
  rows: LotRows,
  own: readonly OwnLot[],
  readings: BatchReadings,
  programme: string,
): LotsRead {
  const tests = groupedBy(rows.tests, ({ lotId }) => lotId)
  const read = new Map(rows.lots.map((row) => [row.id, lotOf(row, tests.get(row.id) ?? [], readings)]))
  const lots = own.flatMap((lot) => asItsOwn(read.get(lot.id), lot, rows.lots))
  const ownIds = new Set(own.map(({ id }) => id))
  const ownDeliveries = new Set(lots.map(deliveryKey))
  const others = rows.lots.filter(
    ({ id }) => !ownIds.has(id) && ownDeliveries.has(deliveryKey(read.get(id)!)),
  )
  const names = lotNames(
    [
      ...own.map(({ id, name }) => ({ id, code: name, recordedIn: { kind: 'own', code: programme } })),
      ...others.map(({ id, code, subject }) => ({ id, code, recordedIn: subject })),
    ],
    programme,
  )
  return {
    lots,
    deliveries: others.map(({ id, code, subject }) => ({
      ...read.get(id)!,
      code: names.get(id) ?? code,
      usedIn: [],
      ...(subject.kind === 'supplier' && { inStore: { supplier: subject.code, lot: code } }),
    })),
  }
}

function asItsOwn(
  lot: Lot | undefined,
  { id, name, allocated, usedIn }: OwnLot,
  rows: readonly LotWithSubject[],
): Lot[] {
  if (!lot) return []
  if (allocated === undefined) return [lot]
  const supplier = rows.find((row) => row.id === id)?.subject.code ?? lot.supplier
  return [{ ...lot, code: name, usedIn, atWorks: { supplier, lot: lot.code, allocated } }]
}
