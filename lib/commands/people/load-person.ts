import type { Transaction } from '@/lib/db/transaction'
import { Refused } from '@/shared/refused'

/** A person, and how many administrators can still sign in. */
export async function loadPerson(tx: Transaction, personId: string) {
  const person = await tx.person.findUnique({ where: { id: personId } })
  if (!person) throw new Refused('There is no such person.')
  const administrators = await tx.person.count({ where: { administrator: true, disabledAt: null } })
  return { person, isLastAdministrator: person.administrator && !person.disabledAt && administrators === 1 }
}
