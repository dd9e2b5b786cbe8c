import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { programmeCode, reason } from '@/lib/commands/inputs'
import { Refused } from '@/shared/refused'

/** Quality takes the lead when the lead was disabled and so cannot hand it over; a programme must not be stranded. */
export const takeLead = defineCommand({
  name: 'take-lead',
  input: z.strictObject({ programme: programmeCode, reason }),
  load: async (tx, _input, { programmeId }) => {
    const { leadId } = await tx.programme.findUniqueOrThrow({
      where: { id: programmeId },
      select: { leadId: true },
    })
    return tx.person.findUniqueOrThrow({ where: { id: leadId }, select: { name: true, disabledAt: true } })
  },
  decide(lead, { reason: why }, { actor }) {
    if (!lead.disabledAt)
      throw new Refused(`${lead.name} leads the programme and can sign in: only they hand the lead over.`)
    return {
      change: { leadId: actor.personId },
      record: { lead: actor.name, personId: actor.personId, insteadOf: lead.name, reason: why },
    }
  },
  async apply(tx, { leadId }, { programmeId }) {
    await tx.programme.update({ where: { id: programmeId }, data: { leadId } })
  },
})
