import { z } from 'zod'
import { actionNamed, loadOpenAction } from '@/lib/commands/actions/load-action'
import { defineCommand } from '@/lib/commands/command'
import { answeredLines } from '@/lib/commands/cost-line-input'
import { paragraph } from '@/lib/commands/inputs'
import { isMoney } from '@/shared/cost/cost-line'
import type { OptionAlternative } from '@/shared/gate/option-alternative'
import { Refused } from '@/shared/refused'

/** The asked department answers: feasible or not, what it costs and takes, and words. */
export const answerAction = defineCommand({
  name: 'answer-action',
  input: z.strictObject({
    ...actionNamed,
    feasible: z.enum(['yes', 'no', 'with changes', 'not asked'], { error: 'Say whether it is feasible.' }),
    amounts: answeredLines.default([]),
    comment: paragraph('The answer'),
  }),
  async load(tx, { action: number }, { programmeId }) {
    const action = await loadOpenAction(tx, programmeId, number)
    const study =
      action.study === null
        ? null
        : await tx.optionStudy.findUnique({
            where: { programmeId_number: { programmeId, number: action.study } },
            select: { alternatives: true },
          })
    const names = ((study?.alternatives ?? []) as unknown as OptionAlternative[]).map(({ name }) => name)
    return { action, names }
  },
  subject: ({ action }) => action,
  decide({ action, names }, { feasible, amounts, comment }) {
    if (action.answer && action.outcome !== 'returned')
      throw new Refused(`Action ${action.number} is answered already and waits to be accepted.`)
    if (action.kind === 'cost' && !amounts.some(isMoney))
      throw new Refused('A question about cost needs an amount.', {
        amounts: 'Give an amount: 0 if it costs nothing, and nothing in its box if it is not known.',
      })
    if (action.kind === 'feasibility' && feasible === 'not asked')
      throw new Refused('A question about feasibility needs yes, no or with changes.', {
        feasible: 'Say whether it is feasible.',
      })
    const stray = amounts.findIndex(({ alternative }) => alternative !== null && !names.includes(alternative))
    if (stray >= 0) {
      const message =
        'The study has no such alternative. Choose one of its alternatives, or none for all of them.'
      throw new Refused(message, { [`amounts.${stray}.alternative`]: message })
    }
    const answer = { feasible, amounts, comment }
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
