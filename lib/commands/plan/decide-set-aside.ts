import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, optionalLine, programmeCode } from '@/lib/commands/inputs'
import { loadPlanItem } from '@/lib/commands/plan/load-plan-item'
import { Prisma } from '@/lib/db/generated/client'
import { Refused } from '@/shared/refused'

/** Quality agrees to set an item aside, or refuses and says why. Not by who proposed it. */
export const decideSetAside = defineCommand({
  name: 'decide-set-aside',
  input: z.strictObject({
    programme: programmeCode,
    item: line('The item'),
    agree: z.boolean({ error: 'Choose: agree or refuse.' }),
    comment: optionalLine('The comment', 1000),
  }),
  async load(tx, { item }, { programmeId }) {
    const { definition, tailoredOut } = await loadPlanItem(tx, programmeId, item)
    if (!tailoredOut) throw new Refused('Nobody proposes that this item is not applicable.')
    if (tailoredOut.agreed) throw new Refused(`${tailoredOut.agreed.byName} has agreed to it already.`)
    return { definition, tailoredOut }
  },
  subject: ({ tailoredOut }) => tailoredOut,
  decide({ definition, tailoredOut }, { agree, comment }, { actor, now }) {
    if (!agree && !comment)
      throw new Refused('Say why the item has to stay.', { comment: 'Say why the item has to stay.' })
    const agreed = { ...tailoredOut, agreed: { byId: actor.personId, byName: actor.name, at: now } }
    return {
      change: { key: definition.key, tailoredOut: agree ? agreed : null },
      record: {
        item: definition.key,
        title: definition.title,
        reason: tailoredOut.reason,
        proposedBy: tailoredOut.proposedByName,
        agree,
        comment,
      },
    }
  },
  async apply(tx, { key, tailoredOut }, { programmeId }) {
    await tx.planItem.update({
      where: { programmeId_key: { programmeId, key } },
      data: { setAside: tailoredOut ?? Prisma.DbNull },
    })
  },
})
