import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { actionNamed, answeringRefusal } from '@/shared/commands/actions/answered'
import { defineFace } from '@/shared/commands/face'
import type { ActionEntry } from '@/shared/gate/programme-state'
import { DEPARTMENTS } from '@/shared/plan/department'

export const attachAnswerFile = defineFace({
  label: 'Lay a file with an answer',
  done: 'Laid a file with an answer',
  may: { scope: 'programme', departments: DEPARTMENTS },
  refuses: (actor: Actor, action: Pick<ActionEntry, 'number' | 'to'>) => answeringRefusal(actor, action),
  record: z.object({
    action: z.number(),
    item: z.string(),
    question: z.string(),
    fileName: z.string(),
    note: z.string(),
  }),
  reads: ({ action, item, question, fileName, note }) => ({
    subject: actionNamed(action, item),
    what: fileName,
    words: note || question,
  }),
  leads: ({ action }) => ({ kind: 'action', number: action }),
})
