import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import {
  alternativeChangeInWords,
  alternativeRecord,
} from '@/shared/commands/specification/alternative-record'
import { DEPARTMENTS } from '@/shared/plan/department'

export const changeAlternative = defineFace({
  label: 'Change an alternative of a study',
  done: 'Changed an alternative of a study',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  record: z.object({
    study: z.number(),
    title: z.string(),
    name: z.string(),
    before: alternativeRecord,
    alternative: alternativeRecord,
    reason: z.string(),
  }),
  reads: ({ study, title, name, before, alternative, reason }) => ({
    subject: `study ${study}, ${title}, ${name}`,
    what: alternativeChangeInWords(before, alternative),
    words: reason,
  }),
  leads: ({ study }) => ({ kind: 'study', number: study }),
})
