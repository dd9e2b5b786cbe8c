import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { programmeCode, reason, wholeNumber } from '@/lib/commands/inputs'
import { lessonOf, withProgramme } from '@/lib/programme/lesson-row'
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
  load: (tx, { lesson: number }, { programmeId }) =>
    tx.lesson.findUnique({ where: { programmeId_number: { programmeId, number } }, ...withProgramme }),
  decide(row, { lesson: number, reason: why }) {
    if (!row) throw new Refused(`There is no lesson ${number} in this programme.`)
    const lesson = lessonOf(row)
    const refused = lessonRetirementRefusal(lesson)
    if (refused) throw new Refused(refused)
    return {
      change: { id: row.id, why },
      record: {
        lesson: number,
        title: lesson.title,
        meaning: 'retires the lesson: programmes opened from now on start without it',
        reason: why,
        brought: changeInWords(lesson.change),
      },
      result: { lesson: number },
    }
  },
  async apply(tx, { id, why }, { actor, now }) {
    await tx.lesson.update({
      where: { id },
      data: { retiredWhy: why, retiredById: actor.personId, retiredByName: actor.name, retiredAt: now },
    })
  },
})
