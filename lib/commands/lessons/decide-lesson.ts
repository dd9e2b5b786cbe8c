import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { programmeCode, reason, wholeNumber } from '@/lib/commands/inputs'
import { lessonOf, withProgramme } from '@/lib/programme/lesson-row'
import { lessonDecisionRefusal } from '@/shared/lessons/lesson'
import { changeInWords } from '@/shared/lessons/lesson-change'
import { Refused } from '@/shared/refused'

/** Quality accepts a lesson for the programmes opened from now on, or declines it. Not by who proposed it. */
export const decideLesson = defineCommand({
  name: 'decide-lesson',
  input: z.strictObject({
    programme: programmeCode,
    lesson: wholeNumber('The lesson', 1, 1_000_000),
    accept: z.boolean({ error: 'Choose: accept or decline.' }),
    reason,
  }),
  load: (tx, { lesson: number }, { programmeId }) =>
    tx.lesson.findUnique({ where: { programmeId_number: { programmeId, number } }, ...withProgramme }),
  decide(row, { lesson: number, accept, reason: why }, { actor }) {
    if (!row) throw new Refused(`There is no lesson ${number} in this programme.`)
    const lesson = lessonOf(row)
    const refused = lessonDecisionRefusal(lesson, actor.personId)
    if (refused) throw new Refused(refused)
    return {
      change: { id: row.id, accept, why },
      record: {
        lesson: number,
        title: lesson.title,
        meaning: accept ? 'accepts the lesson for the programmes opened from now on' : 'declines the lesson',
        accepted: accept,
        reason: why,
        proposedBy: lesson.proposed.byName,
        proposes: changeInWords(lesson.change),
      },
      result: { lesson: number },
    }
  },
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
