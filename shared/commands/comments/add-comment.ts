import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { DEPARTMENTS } from '@/shared/plan/department'
import { subjectRecord } from '@/shared/reviews/subject'
import { commentsPlace, subjectInWords } from '@/shared/reviews/subject-in-words'

export const addComment = defineFace({
  label: 'Comment on an item, a finding or a value',
  done: 'Commented on an item, a finding or a value',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  record: z.object({
    number: z.number(),
    about: subjectRecord,
    text: z.string(),
    mentioned: z.array(z.object({ name: z.string() })),
  }),
  reads: ({ number, about, text, mentioned }) => ({
    subject: subjectInWords(about, about.name),
    what: [
      `comment ${number}`,
      mentioned.length > 0 ? `for ${mentioned.map(({ name }) => name).join(', ')}` : '',
    ]
      .filter(Boolean)
      .join(', '),
    words: text,
  }),
  leads: ({ about }) => commentsPlace(about),
})
