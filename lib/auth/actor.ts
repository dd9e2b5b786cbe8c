import type { Transaction } from '@/lib/db/transaction'
import { standingIn, standInsOf } from '@/lib/programme/stand-ins'
import type { Department } from '@/shared/plan/department'
import type { Actor } from '@/shared/actor'
import { Refused } from '@/shared/refused'

/** The person as the programme knows them on a day, 'YYYY-MM-DD', read where the decision is made. */
export async function actorInProgramme(
  tx: Transaction,
  personId: string,
  programmeId: string,
  today: string,
): Promise<Actor> {
  const person = await tx.person.findUnique({
    where: { id: personId },
    select: { name: true, auditor: true, administrator: true, disabledAt: true },
  })
  if (!person || person.disabledAt) throw new Refused('Your access has ended. Ask an administrator.')
  const { name, auditor, administrator } = person
  const { memberships, leads } = programmeId
    ? await partIn(tx, personId, programmeId)
    : { memberships: [], leads: false }
  const departments = memberships.map(({ department }) => department as Department)
  const own: Actor = { personId, name, departments, leads, auditor, administrator }
  if (!programmeId || leads || departments.length > 0 || auditor || administrator) return own
  return standingIn(own, (await standInsOf(tx, personId, today)).get(programmeId))
}

async function partIn(tx: Transaction, personId: string, programmeId: string) {
  const programme = await tx.programme.findUnique({
    where: { id: programmeId },
    select: { leadId: true, memberships: { where: { personId }, select: { department: true } } },
  })
  return { memberships: programme?.memberships ?? [], leads: programme?.leadId === personId }
}
