import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { actionNamed, answerDecisionRefusal, answerRecord } from '@/shared/commands/actions/answered'
import { defineFace, type EntryFace } from '@/shared/commands/face'
import { answerInWords } from '@/shared/gate/answer-in-words'
import type { ActionEntry } from '@/shared/gate/programme-state'
import { DEPARTMENTS } from '@/shared/plan/department'

/** The face of a decision on an answer, whichever way it goes. `decides` says it of the asking department: "accepts". */
export const answerDecision = ({
  decides,
  ...named
}: Pick<EntryFace, 'label' | 'done'> & { readonly decides: string }) =>
  defineFace({
    ...named,
    may: { scope: 'programme', departments: DEPARTMENTS },
    refuses: (actor: Actor, action: Pick<ActionEntry, 'from' | 'answeredById'>) =>
      answerDecisionRefusal(actor, action, decides),
    separates: true,
    record: z.object({ action: z.number(), item: z.string(), answer: answerRecord, comment: z.string() }),
    reads: ({ action, item, answer, comment }) => ({
      subject: actionNamed(action, item),
      what: answerInWords(answer),
      words: comment,
    }),
    leads: ({ action }) => ({ kind: 'action', number: action }),
  })
