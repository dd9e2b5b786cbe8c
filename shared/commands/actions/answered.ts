import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { itemName } from '@/shared/commands/named'
import type { ActionEntry } from '@/shared/gate/programme-state'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'

/** An answer as an entry records it. */
export const answerRecord = z.object({
  feasible: z.enum(['yes', 'no', 'with changes', 'not asked']),
  amount: z.number().nullable(),
  amountPer: z.enum(['board', 'lot', 'once']).nullable(),
  leadTimeDays: z.number().nullable(),
  comment: z.string(),
})

/** "action 3, Lead holes" */
export const actionNamed = (number: number, item: string): string => `action ${number}, ${itemName(item)}`

/** Why a person may not decide on an answer: it is the asking department's, and not who answered. */
export function answerDecisionRefusal(
  actor: Actor,
  { from, answeredById }: Pick<ActionEntry, 'from' | 'answeredById'>,
  decides: string,
): string | undefined {
  if (!actor.departments.includes(from)) return `${DEPARTMENT_NAMES[from]} asked and ${decides} the answer.`
  return answeredById === actor.personId
    ? 'You answered it yourself. Somebody else of the asking department decides.'
    : undefined
}
