import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { actionNamed } from '@/shared/commands/actions/answered'
import { defineFace } from '@/shared/commands/face'
import type { ActionEntry } from '@/shared/gate/programme-state'
import { DEPARTMENT_NAMES, DEPARTMENTS } from '@/shared/plan/department'

export const withdrawAction = defineFace({
  label: 'Withdraw an action',
  done: 'Withdrew an action',
  may: { scope: 'programme', departments: DEPARTMENTS },
  refuses: (actor: Actor, { from }: Pick<ActionEntry, 'from'>) =>
    actor.departments.includes(from)
      ? undefined
      : `${DEPARTMENT_NAMES[from]} asked; only they can withdraw it.`,
  record: z.object({ action: z.number(), item: z.string(), question: z.string(), reason: z.string() }),
  reads: ({ action, item, question, reason }) => ({
    subject: actionNamed(action, item),
    what: question,
    words: reason,
  }),
  leads: ({ action }) => ({ kind: 'action', number: action }),
})
