import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { answeredLineRecord } from '@/shared/commands/cost-line-record'
import { itemName } from '@/shared/commands/named'
import { COST_PERS } from '@/shared/cost/cost-line'
import { answerOf } from '@/shared/gate/action-answer'
import type { ActionEntry } from '@/shared/gate/programme-state'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'

const feasible = z.enum(['yes', 'no', 'with changes', 'not asked'])

/** An answer as an entry records it, in this version or one before it. */
export const answerRecord = z
  .union([
    z.object({ feasible, amounts: z.array(answeredLineRecord), comment: z.string() }),
    z.object({
      feasible,
      amount: z.number().nullable(),
      amountPer: z.enum(COST_PERS).nullable(),
      leadTimeDays: z.number().nullable(),
      comment: z.string(),
    }),
  ])
  .transform(answerOf)

/** "action 3, Lead holes" */
export const actionNamed = (number: number, item: string): string => `action ${number}, ${itemName(item)}`

/** Why a person may not answer: it is the asked department's, whoever of it is named. */
export const answeringRefusal = (
  actor: Actor,
  { number, to }: Pick<ActionEntry, 'number' | 'to'>,
): string | undefined =>
  actor.departments.includes(to)
    ? undefined
    : `Action ${number} is for ${DEPARTMENT_NAMES[to].toLowerCase()} to answer.`

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
