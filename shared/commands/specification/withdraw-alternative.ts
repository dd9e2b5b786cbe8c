import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { DEPARTMENTS } from '@/shared/plan/department'

export const withdrawAlternative = defineFace({
  label: 'Withdraw an alternative of a study',
  done: 'Withdrew an alternative of a study',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  record: z.object({ study: z.number(), title: z.string(), name: z.string(), reason: z.string() }),
  reads: ({ study, title, name, reason }) => ({
    subject: `study ${study}, ${title}`,
    what: name,
    words: reason,
  }),
  leads: ({ study }) => ({ kind: 'study', number: study }),
})
