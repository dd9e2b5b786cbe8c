import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { programmeCode, reason, wholeNumber } from '@/lib/commands/inputs'
import { loadLesson } from '@/lib/commands/lessons/load-lesson'
import { lessonRetirementRefusal } from '@/shared/lessons/lesson'
import { changeInWords } from '@/shared/lessons/lesson-change'
import { Refused } from '@/shared/refused'

/** Quality ends an accepted lesson: programmes opened from now on start without it; those that have it keep it. */
export const retireLesson = defineCommand({
  name: 'retire-lesson',
  input: z.strictObject({
    programme: programmeCode,
    lesson: wholeNumber('The lesson', 1, 1_000_000),
    reason,
  }),
  load: (tx, { lesson }, { programmeId }) => loadLesson(tx, programmeId, lesson),
  decide({ id, lesson }, { reason: why }) {
    const refused = lessonRetirementRefusal(lesson)
    if (refused) throw new Refused(refused)
    return {
      change: { id, why },
      record: {
        lesson: lesson.number,
        title: lesson.title,
        meaning: 'retires the lesson: programmes opened from now on start without it',
        reason: why,
        brought: changeInWords(lesson.change),
      },
      result: { lesson: lesson.number },
    }
  },
  async apply(tx, { id, why }, { actor, now }) {
    await tx.lesson.update({
      where: { id },
      data: { retiredWhy: why, retiredById: actor.personId, retiredByName: actor.name, retiredAt: now },
    })
  },
})
