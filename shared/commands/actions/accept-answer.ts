import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { actionNamed, answerDecisionRefusal, answerRecord } from '@/shared/commands/actions/answered'
import { defineFace } from '@/shared/commands/face'
import { answerInWords } from '@/shared/gate/answer-in-words'
import type { ActionEntry } from '@/shared/gate/programme-state'
import { DEPARTMENTS } from '@/shared/plan/department'

export const acceptAnswer = defineFace({
  label: 'Accept an answer',
  done: 'Accepted an answer',
  may: { scope: 'programme', departments: DEPARTMENTS },
  refuses: (actor: Actor, action: Pick<ActionEntry, 'from' | 'answeredById'>) =>
    answerDecisionRefusal(actor, action, 'accepts'),
  separates: true,
  record: z.object({ action: z.number(), item: z.string(), answer: answerRecord, comment: z.string() }),
  reads: ({ action, item, answer, comment }) => ({
    subject: actionNamed(action, item),
    what: answerInWords(answer),
    words: comment,
  }),
  leads: ({ action }) => ({ kind: 'action', number: action }),
})
