import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { attendanceInput, memberNames, presentOf } from '@/lib/commands/reviews/attendance'
import { loadOpenReview, reviewNamed } from '@/lib/commands/reviews/load-open-review'

/** Who is there after all, and who chairs it; while the minutes are open. */
export const recordAttendance = defineCommand({
  name: 'record-attendance',
  input: z.strictObject({ ...reviewNamed, ...attendanceInput }),
  load: async (tx, { review }, { programmeId }) => ({
    review: await loadOpenReview(tx, programmeId, review),
    names: await memberNames(tx, programmeId),
  }),
  decide({ review: { number, chair: chairBefore, present: before }, names }, { chair, members, guests }) {
    const { present, chairName } = presentOf(names, { chair, members, guests })
    return {
      change: { number, chairId: chair, present },
      record: {
        review: number,
        chairId: chair,
        chairName,
        present: present.map((one) => ({ ...one })),
        before: { chairName: chairBefore, present: before.map(({ name }) => name) },
      },
    }
  },
  async apply(tx, { number, chairId, present }, { programmeId }) {
    await tx.review.update({
      where: { programmeId_number: { programmeId, number } },
      data: { chairId, present: present as object[] },
    })
  },
})
