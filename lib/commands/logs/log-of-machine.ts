import type { Transaction } from '@/lib/db/transaction'
import { logName } from '@/shared/works/log-name'

/** The log of a machine that is called so there; undefined when it has none. */
export async function logOfMachine(tx: Pick<Transaction, 'log'>, machineId: string, name: string) {
  const logs = await tx.log.findMany({
    where: { machineId },
    include: { subject: { select: { kind: true, code: true } } },
  })
  return logs.find(({ code, subject }) => logName(code, subject) === name)
}
