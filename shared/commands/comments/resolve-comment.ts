import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { DEPARTMENTS } from '@/shared/plan/department'
import { subjectRecord } from '@/shared/reviews/subject'
import { commentsPlace, subjectInWords } from '@/shared/reviews/subject-in-words'

export const resolveComment = defineFace({
  label: 'Resolve a comment',
  done: 'Resolved a comment',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  record: z.object({ comment: z.number(), about: subjectRecord, text: z.string() }),
  reads: ({ comment, about, text }) => ({
    subject: subjectInWords(about, about.name),
    what: `comment ${comment}`,
    words: text,
  }),
  leads: ({ about }) => commentsPlace(about),
})
