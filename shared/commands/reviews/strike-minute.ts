import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { DEPARTMENTS } from '@/shared/plan/department'

export const strikeMinute = defineFace({
  label: 'Strike a line of minutes',
  done: 'Struck a line of minutes',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  record: z.object({
    review: z.number(),
    line: z.number(),
    text: z.string(),
    instead: z.object({ line: z.number(), text: z.string() }).nullable(),
    reason: z.string(),
  }),
  reads: ({ review, line, text, instead, reason }) => ({
    subject: `review ${review}, line ${line}`,
    what: instead ? `“${text}” → line ${instead.line}: “${instead.text}”` : `“${text}” struck`,
    words: reason,
  }),
  leads: ({ review }) => ({ kind: 'review', number: review }),
})
