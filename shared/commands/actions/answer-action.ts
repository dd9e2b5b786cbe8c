import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { actionNamed, answeringRefusal, answerRecord } from '@/shared/commands/actions/answered'
import { defineFace } from '@/shared/commands/face'
import { answerInWords } from '@/shared/gate/answer-in-words'
import type { ActionEntry } from '@/shared/gate/programme-state'
import { DEPARTMENTS } from '@/shared/plan/department'

export const answerAction = defineFace({
  label: 'Answer an action',
  done: 'Answered an action',
  may: { scope: 'programme', departments: DEPARTMENTS },
  refuses: (actor: Actor, action: Pick<ActionEntry, 'number' | 'to'>) => answeringRefusal(actor, action),
  record: z.object({ action: z.number(), item: z.string(), question: z.string(), answer: answerRecord }),
  reads: ({ action, item, question, answer }) => ({
    subject: actionNamed(action, item),
    what: answerInWords({ ...answer, comment: '' }),
    words: answer.comment || question,
  }),
  leads: ({ action }) => ({ kind: 'action', number: action }),
})
