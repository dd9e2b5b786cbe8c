import { z } from 'zod'
import { actionNamed, loadOpenAction } from '@/lib/commands/actions/load-action'
import { defineCommand } from '@/lib/commands/command'
import { optionalLine } from '@/lib/commands/inputs'
import { recordable } from '@/lib/commands/recordable'
import { Refused } from '@/shared/refused'

/** The asker takes the answer; the action is closed. */
export const acceptAnswer = defineCommand({
  name: 'accept-answer',
  input: z.strictObject({ ...actionNamed, comment: optionalLine('The comment', 1000) }),
  load: (tx, { action }, { programmeId }) => loadOpenAction(tx, programmeId, action),
  subject: (action) => action,
  decide(action, { comment }) {
    if (!action.answer || action.outcome === 'returned')
      throw new Refused(`Action ${action.number} is not answered yet.`)
    return {
      change: { id: action.id, comment },
      record: { action: action.number, item: action.itemKey, answer: recordable(action.answer), comment },
    }
  },
  async apply(tx, { id, comment }, { actor, now }) {
    await tx.action.update({
      where: { id },
      data: { outcome: 'accepted', outcomeWhy: comment, closedById: actor.personId, closedAt: now },
    })
  },
})
