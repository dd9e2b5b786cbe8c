import { z } from 'zod'
import { actionNamed, loadOpenAction } from '@/lib/commands/actions/load-action'
import { defineCommand } from '@/lib/commands/command'
import { reason } from '@/lib/commands/inputs'

/** The asking department needs no answer any more. */
export const withdrawAction = defineCommand({
  name: 'withdraw-action',
  input: z.strictObject({ ...actionNamed, reason }),
  load: (tx, { action }, { programmeId }) => loadOpenAction(tx, programmeId, action),
  subject: (action) => action,
  decide: (action, { reason: why }) => ({
    change: { id: action.id, why },
    record: { action: action.number, item: action.itemKey, question: action.question, reason: why },
  }),
  async apply(tx, { id, why }, { actor, now }) {
    await tx.action.update({
      where: { id },
      data: { outcome: 'withdrawn', outcomeWhy: why, closedById: actor.personId, closedAt: now },
    })
  },
})
