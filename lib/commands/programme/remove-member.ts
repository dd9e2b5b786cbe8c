import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { department, id, programmeCode, reason } from '@/lib/commands/inputs'
import { Refused } from '@/shared/refused'

/** Takes a person out of a department. What they signed stays signed. */
export const removeMember = defineCommand({
  name: 'remove-member',
  input: z.strictObject({ programme: programmeCode, personId: id, department, reason }),
  load: (tx, { personId, department: from }, { programmeId }) =>
    tx.membership.findUnique({
      where: { programmeId_personId_department: { programmeId, personId, department: from } },
      select: {
        personId: true,
        person: { select: { name: true } },
        programme: { select: { leadId: true, memberships: { select: { personId: true } } } },
      },
    }),
  decide(membership, { department: from, reason: why }) {
    if (!membership) throw new Refused('This person is not in that department any more.')
    const { personId, programme, person } = membership
    const left = programme.memberships.filter((other) => other.personId === personId).length - 1
    if (programme.leadId === personId && left === 0) {
      throw new Refused(`${person.name} leads the programme. Hand the lead to somebody else first.`)
    }
    return {
      change: { personId, department: from },
      record: { person: person.name, personId, department: from, reason: why },
    }
  },
  async apply(tx, { personId, department: from }, { programmeId }) {
    await tx.membership.delete({
      where: { programmeId_personId_department: { programmeId, personId, department: from } },
    })
  },
})
