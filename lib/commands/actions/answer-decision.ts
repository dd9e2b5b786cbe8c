import { loadOpenAction } from '@/lib/commands/actions/load-action'
import type { Context } from '@/lib/commands/command'
import { recordable } from '@/lib/commands/recordable'
import type { Transaction } from '@/lib/db/transaction'
import { Refused } from '@/shared/refused'

type OpenAction = Awaited<ReturnType<typeof loadOpenAction>>

/** The work of a decision on an answer, whichever way it goes. Refused while the action has no answer that waits. */
export const answerDecision = (outcome: 'accepted' | 'returned') => ({
  load: (tx: Transaction, { action }: { action: number }, { programmeId }: Context) =>
    loadOpenAction(tx, programmeId, action),
  subject: (action: OpenAction) => action,
  decide(action: OpenAction, { comment }: { comment: string }) {
    if (!action.answer || action.outcome === 'returned')
      throw new Refused(`Action ${action.number} is not answered yet.`)
    return {
      change: { id: action.id, comment },
      record: { action: action.number, item: action.itemKey, answer: recordable(action.answer), comment },
    }
  },
  async apply(
    tx: Transaction,
    { id, comment }: { id: string; comment: string },
    { actor, now }: Context,
  ): Promise<void> {
    await tx.action.update({
      where: { id },
      data: { outcome, outcomeWhy: comment, closedById: actor.personId, closedAt: now },
    })
  },
})
