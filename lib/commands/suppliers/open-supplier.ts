import type { Transaction } from '@/lib/db/transaction'
import { Refused } from '@/shared/refused'

/** A supplier from whom lots are received, by its trail; refuses a closed one. */
export async function openSupplier(tx: Transaction, trailId: string): Promise<{ readonly code: string }> {
  const supplier = await tx.supplier.findUniqueOrThrow({
    where: { id: trailId },
    select: { code: true, closedAt: true },
  })
  if (supplier.closedAt)
    throw new Refused(`Supplier ${supplier.code} is closed. Nothing is received from it any more.`)
  return supplier
}
