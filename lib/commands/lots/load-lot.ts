import type { Transaction } from '@/lib/db/transaction'
import { Refused } from '@/shared/refused'

/** A lot of this programme, with its newest facts. Refused when there is none of that code. */
export async function loadLot(tx: Transaction, programmeId: string, code: string) {
  const lot = await tx.lot.findUnique({ where: { programmeId_code: { programmeId, code } } })
  if (!lot) throw new Refused(`There is no lot ${code} in this programme.`)
  return lot
}
