import type { Transaction } from '@/lib/db/transaction'
import { standingIn, standInsOf } from '@/lib/programme/stand-ins'
import type { Department } from '@/shared/plan/department'
import type { Actor } from '@/shared/actor'
import { Refused } from '@/shared/refused'
import type { TrailKind } from '@/shared/works/works-kind'

/**
 * The person as what a command is about knows them on a day, 'YYYY-MM-DD', read where the decision is made: by their
 * part in the programme, by their department in the works, or by their rights in the installation.
 */
export async function actorOn(
  tx: Transaction,
  personId: string,
  { kind, id }: { readonly kind: TrailKind; readonly id: string },
  today: string,
): Promise<Actor> {
  if (kind === 'programme' || kind === 'installation') return actorInProgramme(tx, personId, id, today)
  const { worksDepartment, ...own } = await personRow(tx, personId)
  return { personId, ...own, departments: worksDepartment === null ? [] : [worksDepartment], leads: false }
}

async function actorInProgramme(
  tx: Transaction,
  personId: string,
  programmeId: string,
  today: string,
): Promise<Actor> {
  const { name, auditor, administrator } = await personRow(tx, personId)
  const { memberships, leads } = programmeId
    ? await partIn(tx, personId, programmeId)
    : { memberships: [], leads: false }
  const departments = memberships.map(({ department }) => department as Department)
  const own: Actor = { personId, name, departments, leads, auditor, administrator }
  if (!programmeId || leads || departments.length > 0 || auditor || administrator) return own
  return standingIn(own, (await standInsOf(tx, personId, today)).get(programmeId))
}

async function personRow(tx: Transaction, personId: string) {
  const person = await tx.person.findUnique({
    where: { id: personId },
    select: { name: true, auditor: true, administrator: true, disabledAt: true, worksDepartment: true },
  })
  if (!person || person.disabledAt) throw new Refused('Your access has ended. Ask an administrator.')
  const { name, auditor, administrator } = person
  return { name, auditor, administrator, worksDepartment: person.worksDepartment as Department | null }
}

async function partIn(tx: Transaction, personId: string, programmeId: string) {
  const programme = await tx.programme.findUnique({
    where: { id: programmeId },
    select: { leadId: true, memberships: { where: { personId }, select: { department: true } } },
  })
  return { memberships: programme?.memberships ?? [], leads: programme?.leadId === personId }
}
