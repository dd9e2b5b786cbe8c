import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { alternativeInWords, alternativeRecord } from '@/shared/commands/specification/alternative-record'
import { DEPARTMENTS } from '@/shared/plan/department'

export const addAlternative = defineFace({
  label: 'Add an alternative to a study',
  done: 'Added an alternative to a study',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  record: z.object({
    study: z.number(),
    title: z.string(),
    alternative: alternativeRecord,
    reason: z.string(),
  }),
  reads: ({ study, title, alternative, reason }) => ({
    subject: `study ${study}, ${title}`,
    what: alternativeInWords(alternative),
    words: reason,
  }),
  leads: ({ study }) => ({ kind: 'study', number: study }),
})
