import { z } from 'zod'
import { actionNamed, loadOpenAction } from '@/lib/commands/actions/load-action'
import { defineCommand } from '@/lib/commands/command'
import { paragraph } from '@/lib/commands/inputs'
import { Refused } from '@/shared/refused'

/** The asked department answers: feasible or not, money, lead time, comment. */
export const answerAction = defineCommand({
  name: 'answer-action',
  input: z.strictObject({
    ...actionNamed,
    feasible: z.enum(['yes', 'no', 'with changes', 'not asked'], { error: 'Say whether it is feasible.' }),
    amount: z
      .number({ error: 'The amount must be a number.' })
      .min(0, 'The amount is not negative.')
      .max(1e9, 'The amount is too large.')
      .nullable(),
    amountPer: z
      .enum(['board', 'lot', 'once'], { error: 'Say what the amount is for: a board, a lot, or once.' })
      .nullable(),
    leadTimeDays: z
      .number({ error: 'The lead time must be a number of days.' })
      .int('The lead time is in whole days.')
      .min(0, 'The lead time is not negative.')
      .max(3650, 'The lead time is at most ten years.')
      .nullable(),
    comment: paragraph('The answer'),
  }),
  load: (tx, { action }, { programmeId }) => loadOpenAction(tx, programmeId, action),
  subject: (action) => action,
  decide(action, { feasible, amount, amountPer, leadTimeDays, comment }) {
    if (action.answer && action.outcome !== 'returned')
      throw new Refused(`Action ${action.number} is answered already and waits to be accepted.`)
    if ((amount === null) !== (amountPer === null))
      throw new Refused('An amount needs what it is for: a board, a lot, or once.', {
        amountPer: 'Say what the amount is for.',
      })
    if (action.kind === 'cost' && amount === null)
      throw new Refused('A question about cost needs an amount.', {
        amount: 'Give an amount, 0 if it costs nothing.',
      })
    if (action.kind === 'feasibility' && feasible === 'not asked')
      throw new Refused('A question about feasibility needs yes, no or with changes.', {
        feasible: 'Say whether it is feasible.',
      })
    const answer = { feasible, amount, amountPer, leadTimeDays, comment }
    return {
      change: { id: action.id, answer },
      record: { action: action.number, item: action.itemKey, question: action.question, answer },
    }
  },
  async apply(tx, { id, answer }, { actor, now }) {
    await tx.action.update({
      where: { id },
      data: { answer, answeredById: actor.personId, answeredAt: now, outcome: null, outcomeWhy: null },
    })
  },
})
