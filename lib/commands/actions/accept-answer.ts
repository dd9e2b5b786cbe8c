import { z } from 'zod'
import { actionNamed, loadOpenAction } from '@/lib/commands/actions/load-action'
import { defineCommand } from '@/lib/commands/command'
import { optionalLine } from '@/lib/commands/inputs'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { Refused } from '@/shared/refused'
import type { JsonValue } from '@/shared/trail/canonical-json'

/** The asker takes the answer; the action is closed. */
export const acceptAnswer = defineCommand({
  name: 'accept-answer',
  input: z.strictObject({ ...actionNamed, comment: optionalLine('The comment', 1000) }),
  load: (tx, { action }, { programmeId }) => loadOpenAction(tx, programmeId, action),
  decide(action, { comment }, { actor }) {
    if (!actor.departments.includes(action.from))
      throw new Refused(`${DEPARTMENT_NAMES[action.from]} asked and accepts the answer.`)
    if (!action.answer || action.outcome === 'returned')
      throw new Refused(`Action ${action.number} is not answered yet.`)
    if (action.answeredById === actor.personId)
      throw new Refused('You answered it yourself. Somebody else of the asking department decides.')
    return {
      change: { id: action.id, comment },
      record: { action: action.number, item: action.itemKey, answer: action.answer as JsonValue, comment },
    }
  },
  async apply(tx, { id, comment }, { actor, now }) {
    await tx.action.update({
      where: { id },
      data: { outcome: 'accepted', outcomeWhy: comment, closedById: actor.personId, closedAt: now },
    })
  },
})
