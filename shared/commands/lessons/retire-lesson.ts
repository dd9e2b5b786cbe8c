import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const retireLesson = defineFace({
  label: 'Retire an accepted lesson',
  done: 'Retired an accepted lesson',
  may: { scope: 'programme', departments: ['quality'], signature: true },
  record: z.object({ lesson: z.number(), title: z.string(), brought: z.string(), reason: z.string() }),
  reads: ({ lesson, title, brought, reason }) => ({
    subject: `lesson ${lesson}, ${title}`,
    what: `brought until now: ${brought}`,
    words: reason,
  }),
  leads: ({ lesson }) => ({ kind: 'lesson', number: lesson }),
})
