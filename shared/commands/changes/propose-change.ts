import { z } from 'zod'
import { changeInWords } from '@/shared/commands/changes/change-in-words'
import { proposedChange } from '@/shared/commands/changes/proposed-change'
import { defineFace } from '@/shared/commands/face'
import { recordedValue } from '@/shared/commands/recorded-value'
import { DEPARTMENTS } from '@/shared/plan/department'

/** Anybody of the programme may propose anything: whose it is answers before it is adopted. */
export const proposeChange = defineFace({
  label: 'Put a change into a change notice',
  done: 'Put a change into a change notice',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  record: z.object({
    notice: z.number(),
    change: proposedChange,
    before: recordedValue,
    reason: z.string(),
  }),
  reads: ({ notice, change, before, reason }) => ({
    subject: `change notice ${notice}`,
    what: changeInWords(change, before),
    words: reason,
  }),
  leads: ({ notice }) => ({ kind: 'notice', number: notice }),
})
