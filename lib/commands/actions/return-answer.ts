import { z } from 'zod'
import { actionNamed, loadOpenAction } from '@/lib/commands/actions/load-action'
import { defineCommand } from '@/lib/commands/command'
import { paragraph } from '@/lib/commands/inputs'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { Refused } from '@/shared/refused'
import type { JsonValue } from '@/shared/trail/canonical-json'

/** The asker sends the answer back and says what is missing. */
export const returnAnswer = defineCommand({
  name: 'return-answer',
  input: z.strictObject({ ...actionNamed, comment: paragraph('What is missing') }),
  load: (tx, { action }, { programmeId }) => loadOpenAction(tx, programmeId, action),
  decide(action, { comment }, { actor }) {
    if (!actor.departments.includes(action.from))
      throw new Refused(`${DEPARTMENT_NAMES[action.from]} asked and returns the answer.`)
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
      data: { outcome: 'returned', outcomeWhy: comment, closedById: actor.personId, closedAt: now },
    })
  },
})
