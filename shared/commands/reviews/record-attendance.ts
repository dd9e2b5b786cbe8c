import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { fromTo } from '@/shared/commands/named'
import { DEPARTMENTS } from '@/shared/plan/department'

const attendanceInWords = (chair: string, present: readonly string[]): string =>
  `chaired by ${chair}, present: ${present.join(', ') || 'nobody'}`

export const recordAttendance = defineFace({
  label: 'Record who is at a review',
  done: 'Recorded who was at a review',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  record: z.object({
    review: z.number(),
    chairName: z.string(),
    present: z.array(z.object({ name: z.string() })),
    /** Entries of an earlier version do not say who was there before. */
    before: z.object({ chairName: z.string(), present: z.array(z.string()) }).optional(),
  }),
  reads: ({ review, chairName, present, before }) => {
    const now = attendanceInWords(
      chairName,
      present.map(({ name }) => name),
    )
    return {
      subject: `review ${review}`,
      what: before ? fromTo(attendanceInWords(before.chairName, before.present), now) : now,
    }
  },
  leads: ({ review }) => ({ kind: 'review', number: review }),
})
