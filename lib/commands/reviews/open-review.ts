import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, programmeCode } from '@/lib/commands/inputs'
import { attendanceInput, memberNames, presentOf } from '@/lib/commands/reviews/attendance'
import { calendarDate } from '@/shared/columns/calendar-date'

/** Opens the minutes of a design review. */
export const openReview = defineCommand({
  name: 'open-review',
  input: z.strictObject({
    programme: programmeCode,
    title: line('The title'),
    heldOn: calendarDate('The day of the review'),
    ...attendanceInput,
  }),
  load: async (tx, _input, { programmeId }) => ({
    names: await memberNames(tx, programmeId),
    newest: (await tx.review.aggregate({ where: { programmeId }, _max: { number: true } }))._max.number ?? 0,
  }),
  decide({ names, newest }, { title, heldOn, chair, ...attending }, { newId }) {
    const { present, chairName } = presentOf(names, { chair, ...attending })
    const review = { id: newId(), number: newest + 1, title, heldOn, chairId: chair, present }
    return {
      change: review,
      record: { ...review, chairName, present: present.map((one) => ({ ...one })) },
      result: { review: review.number },
    }
  },
  async apply(tx, review, { programmeId, actor, now }) {
    await tx.review.create({
      data: {
        ...review,
        present: review.present as object[],
        programmeId,
        openedById: actor.personId,
        openedAt: now,
      },
    })
  },
})
