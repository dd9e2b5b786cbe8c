import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { programmeCode, reason, wholeNumber } from '@/lib/commands/inputs'
import { loadLesson } from '@/lib/commands/lessons/load-lesson'
import { changeInWords } from '@/shared/lessons/lesson-change'

/** Quality accepts a lesson for the programmes opened from now on, or declines it. Not by who proposed it. */
export const decideLesson = defineCommand({
  name: 'decide-lesson',
  input: z.strictObject({
    programme: programmeCode,
    lesson: wholeNumber('The lesson', 1, 1_000_000),
    accept: z.boolean({ error: 'Choose: accept or decline.' }),
    reason,
  }),
  load: (tx, { lesson }, { programmeId }) => loadLesson(tx, programmeId, lesson),
  subject: ({ lesson }) => lesson,
  decide: ({ id, lesson }, { accept, reason: why }) => ({
    change: { id, accept, why },
    record: {
      lesson: lesson.number,
      title: lesson.title,
      meaning: accept ? 'accepts the lesson for the programmes opened from now on' : 'declines the lesson',
      accepted: accept,
      reason: why,
      proposedBy: lesson.proposed.byName,
      proposes: changeInWords(lesson.change),
    },
    result: { lesson: lesson.number },
  }),
  async apply(tx, { id, accept, why }, { actor, now }) {
    await tx.lesson.update({
      where: { id },
      data: {
        decision: accept ? 'accepted' : 'declined',
        decisionWhy: why,
        decidedById: actor.personId,
        decidedByName: actor.name,
        decidedAt: now,
      },
    })
  },
})
