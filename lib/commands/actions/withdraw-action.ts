import { z } from 'zod'
import { actionNamed, loadOpenAction } from '@/lib/commands/actions/load-action'
import { defineCommand } from '@/lib/commands/command'
import { reason } from '@/lib/commands/inputs'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { Refused } from '@/shared/refused'

/** The asking department needs no answer any more. */
export const withdrawAction = defineCommand({
  name: 'withdraw-action',
  input: z.strictObject({ ...actionNamed, reason }),
  load: (tx, { action }, { programmeId }) => loadOpenAction(tx, programmeId, action),
  decide(action, { reason: why }, { actor }) {
    if (!actor.departments.includes(action.from))
      throw new Refused(`${DEPARTMENT_NAMES[action.from]} asked; only they can withdraw it.`)
    return {
      change: { id: action.id, why },
      record: { action: action.number, item: action.itemKey, question: action.question, reason: why },
    }
  },
  async apply(tx, { id, why }, { actor, now }) {
    await tx.action.update({
      where: { id },
      data: { outcome: 'withdrawn', outcomeWhy: why, closedById: actor.personId, closedAt: now },
    })
  },
})
