import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'
import { lessonDecisionRefusal } from '@/shared/lessons/lesson'

export const decideLesson = defineFace({
  label: 'Accept or decline a lesson',
  done: 'Accepted or declined a lesson',
  may: { scope: 'programme', departments: ['quality'], signature: true },
  refuses: (actor: Actor, lesson: Parameters<typeof lessonDecisionRefusal>[0]) =>
    lessonDecisionRefusal(lesson, actor.personId),
  record: z.object({
    lesson: z.number(),
    title: z.string(),
    accepted: z.boolean(),
    proposes: z.string(),
    reason: z.string(),
  }),
  reads: ({ lesson, title, accepted, proposes, reason }) => ({
    subject: `lesson ${lesson}, ${title}`,
    what: `${accepted ? 'accepted' : 'declined'}: ${proposes}`,
    words: reason,
  }),
  leads: ({ lesson }) => ({ kind: 'lesson', number: lesson }),
})
