import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { DEPARTMENTS } from '@/shared/plan/department'
import { LINE_NAMES } from '@/shared/reviews/review'
import { subjectRecord } from '@/shared/reviews/subject'
import { subjectInWords } from '@/shared/reviews/subject-in-words'

export const writeMinute = defineFace({
  label: 'Write a line of minutes',
  done: 'Wrote a line of minutes',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  record: z.object({
    review: z.number(),
    line: z.number(),
    kind: z.enum(['point', 'note', 'decision']),
    about: subjectRecord.nullable(),
    text: z.string(),
    corrects: z.number().nullable(),
  }),
  reads: ({ review, line, kind, about, text, corrects }) => ({
    subject: `review ${review}, line ${line}`,
    what: [
      LINE_NAMES[kind].toLowerCase(),
      about ? `about ${subjectInWords(about, about.name)}` : '',
      corrects === null ? '' : `instead of line ${corrects}`,
    ]
      .filter(Boolean)
      .join(', '),
    words: text,
  }),
  leads: ({ review }) => ({ kind: 'review', number: review }),
})
