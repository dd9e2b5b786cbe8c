import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { firstFew } from '@/shared/commands/named'
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
    what: `chaired by ${chairName}, present: ${firstFew(present.map(({ name }) => name))}`,
  }),
  leads: ({ review }) => ({ kind: 'review', number: review }),
})
