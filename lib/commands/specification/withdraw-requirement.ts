import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, programmeCode, reason } from '@/lib/commands/inputs'
import { Refused } from '@/shared/refused'

export const withdrawRequirement = defineCommand({
  name: 'withdraw-requirement',
  input: z.strictObject({ programme: programmeCode, requirement: id, reason }),
  load: (tx, { requirement }, { programmeId }) =>
    tx.requirement.findFirst({ where: { id: requirement, programmeId, withdrawnAt: null } }),
  decide(requirement, { reason: why }) {
    if (!requirement) throw new Refused('This requirement does not stand any more.')
    const { id: key, limit, authority, document, value } = requirement
    return {
      change: { id: key },
      record: { requirement: key, limit, authority, document, value, reason: why },
    }
  },
  async apply(tx, { id: key }, { actor, now }) {
    await tx.requirement.update({
      where: { id: key },
      data: { withdrawnById: actor.personId, withdrawnAt: now },
    })
  },
})
