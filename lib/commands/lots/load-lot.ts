import type { Lot } from '@/lib/db/generated/client'
import type { Transaction } from '@/lib/db/transaction'
import { Refused } from '@/shared/refused'

/** A lot of a supplier, or of a programme that recorded it, as it stands, corrections included. Refused when there is none of that code. */
export async function loadLot(tx: Transaction, trailId: string, code: string): Promise<Lot> {
  const lot = await tx.lot.findUnique({ where: { trailId_code: { trailId, code } } })
  if (!lot) throw new Refused(`There is no lot ${code} here.`)
  const newest = await tx.correction.findFirst({
    where: { subjectId: lot.id },
    orderBy: { number: 'desc' },
    select: { values: true },
  })
  return { ...lot, ...(newest?.values as Partial<Lot> | undefined) }
}
