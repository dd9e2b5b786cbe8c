import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, programmeCode, reason } from '@/lib/commands/inputs'
import { loadPlanItem } from '@/lib/commands/plan/load-plan-item'
import { Refused } from '@/shared/refused'

/** Proposes that an item need not be settled in this programme; quality decides. */
export const proposeSetAside = defineCommand({
  name: 'propose-set-aside',
  input: z.strictObject({ programme: programmeCode, item: line('The item'), reason }),
  load: (tx, { item }, { programmeId }) => loadPlanItem(tx, programmeId, item),
  decide({ definition, tailoredOut }, { reason: why }, { actor, now }) {
    if (tailoredOut)
      throw new Refused(
        tailoredOut.agreed
          ? 'The item is not applicable already.'
          : 'It is proposed already; quality has to decide.',
      )
    const proposal = {
      reason: why,
      proposedById: actor.personId,
      proposedByName: actor.name,
      proposedAt: now,
      agreed: null,
    }
    return {
      change: { key: definition.key, tailoredOut: proposal },
      record: { item: definition.key, title: definition.title, reason: why },
    }
  },
  async apply(tx, { key, tailoredOut }, { programmeId }) {
    await tx.planItem.update({
      where: { programmeId_key: { programmeId, key } },
      data: { setAside: tailoredOut },
    })
  },
})
