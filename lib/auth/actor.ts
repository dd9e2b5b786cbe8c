import type { Transaction } from '@/lib/db/transaction'
import type { Department } from '@/shared/plan/department'
import type { Actor } from '@/shared/actor'
import { Refused } from '@/shared/refused'

/** The person as the programme knows them, read where the decision is made. */
export async function actorInProgramme(
  tx: Transaction,
  personId: string,
  programmeId: string,
): Promise<Actor> {
  const person = await tx.person.findUnique({
    where: { id: personId },
    select: { name: true, auditor: true, administrator: true, disabledAt: true },
  })
  if (!person || person.disabledAt) throw new Refused('Your access has ended. Ask an administrator.')
  const { memberships, leads } = programmeId
    ? await partIn(tx, personId, programmeId)
    : { memberships: [], leads: false }
  return {
    personId,
    name: person.name,
    departments: memberships.map(({ department }) => department as Department),
    leads,
    auditor: person.auditor,
    administrator: person.administrator,
  }
}

async function partIn(tx: Transaction, personId: string, programmeId: string) {
  const programme = await tx.programme.findUnique({
    where: { id: programmeId },
    select: { leadId: true, memberships: { where: { personId }, select: { department: true } } },
  })
  return { memberships: programme?.memberships ?? [], leads: programme?.leadId === personId }
}
