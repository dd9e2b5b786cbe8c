import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { DEPARTMENTS } from '@/shared/plan/department'

export const recordAttendance = defineFace({
  label: 'Record who is at a review',
  done: 'Recorded who was at a review',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  record: z.object({
    review: z.number(),
    chairName: z.string(),
    present: z.array(z.object({ name: z.string() })),
  }),
  reads: ({ review, chairName, present }) => ({
    subject: `review ${review}`,
    what: `chaired by ${chairName}, present: ${present.map(({ name }) => name).join(', ')}`,
  }),
  leads: ({ review }) => ({ kind: 'review', number: review }),
})
