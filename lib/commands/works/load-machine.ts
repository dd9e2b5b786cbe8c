import type { Transaction } from '@/lib/db/transaction'
import { Refused } from '@/shared/refused'

/** A machine that is open, by its trail, with its line; refuses a closed one. */
export async function openMachineOf(tx: Transaction, trailId: string) {
  const machine = await tx.machine.findUniqueOrThrow({
    where: { id: trailId },
    select: { id: true, code: true, kind: true, closedAt: true, line: { select: { code: true } } },
  })
  if (machine.closedAt)
    throw new Refused(`Machine ${machine.code} is closed. Nothing is recorded of it any more.`)
  return machine
}
