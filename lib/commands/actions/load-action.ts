import { programmeCode, wholeNumber } from '@/lib/commands/inputs'
import type { Transaction } from '@/lib/db/transaction'
import { answerOf, type ActionAnswer, type FirstAnswer } from '@/shared/gate/action-answer'
import type { Department } from '@/shared/plan/department'
import { Refused } from '@/shared/refused'

/** Which action a command is about. */
export const actionNamed = { programme: programmeCode, action: wholeNumber('The action', 1, 1_000_000) }

/** The action of that number, still open. Refused when there is none, or when it is closed. */
export async function loadOpenAction(tx: Transaction, programmeId: string, number: number) {
  const action = await tx.action.findUnique({ where: { programmeId_number: { programmeId, number } } })
  if (!action) throw new Refused(`There is no action ${number} in this programme.`)
  if (action.outcome === 'accepted' || action.outcome === 'withdrawn')
    throw new Refused(`Action ${number} is closed: it was ${action.outcome}.`)
  return {
    ...action,
    from: action.from as Department,
    to: action.to as Department,
    answer: action.answer === null ? null : answerOf(action.answer as unknown as ActionAnswer | FirstAnswer),
  }
}
