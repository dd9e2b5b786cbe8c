import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, programmeCode } from '@/lib/commands/inputs'
import { Refused } from '@/shared/refused'

export const handOverLead = defineCommand({
  name: 'hand-over-lead',
  input: z.strictObject({ programme: programmeCode, personId: id }),
  load: (tx, { personId }, { programmeId }) =>
    tx.membership.findFirst({
      where: { programmeId, personId },
      select: {
        person: { select: { id: true, name: true, disabledAt: true } },
        programme: { select: { leadId: true } },
      },
    }),
  decide(membership, _input, { actor }) {
    if (!membership || membership.person.disabledAt)
      throw new Refused('The new lead has to be a member of the programme.')
    const { person, programme } = membership
    if (programme.leadId === person.id) throw new Refused(`${person.name} leads the programme already.`)
    return {
      change: { leadId: person.id },
      record: { lead: person.name, personId: person.id, insteadOf: actor.name },
    }
  },
  async apply(tx, { leadId }, { programmeId }) {
    await tx.programme.update({ where: { id: programmeId }, data: { leadId } })
  },
})
