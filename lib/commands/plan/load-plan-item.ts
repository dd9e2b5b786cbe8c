import type { Transaction } from '@/lib/db/transaction'
import { plannedItems } from '@/lib/programme/planned-items'
import type { PlannedItem } from '@/shared/gate/programme-state'
import { Refused } from '@/shared/refused'

/** One item of a programme's plan, as tailored. Refused when the plan has none of that key. */
export async function loadPlanItem(tx: Transaction, programmeId: string, key: string): Promise<PlannedItem> {
  const row = await tx.planItem.findUnique({ where: { programmeId_key: { programmeId, key } } })
  const [item] = row ? plannedItems([row]) : []
  if (!item) throw new Refused('The plan of this programme has no such item.')
  return item
}
