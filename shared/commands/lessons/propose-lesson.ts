import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { DEPARTMENTS } from '@/shared/plan/department'

export const proposeLesson = defineFace({
  label: 'Propose a lesson for later programmes',
  done: 'Proposed a lesson for later programmes',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  record: z.object({ lesson: z.number(), title: z.string(), learnt: z.string(), proposes: z.string() }),
  reads: ({ lesson, title, learnt, proposes }) => ({
    subject: `lesson ${lesson}, ${title}`,
    what: proposes,
    words: learnt,
  }),
  leads: ({ lesson }) => ({ kind: 'lesson', number: lesson }),
})
