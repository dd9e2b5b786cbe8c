import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { chairRefusal } from '@/shared/commands/reviews/own-review'
import { counted } from '@/shared/quantity/counted'
import { DEPARTMENTS } from '@/shared/plan/department'

export const closeReview = defineFace({
  label: 'Close a review and sign its minutes',
  done: 'Closed a review and signed its minutes',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true, signature: true },
  refuses: chairRefusal,
  record: z.object({ review: z.number(), title: z.string(), lines: z.number(), digest: z.string() }),
  reads: ({ review, title, lines }) => ({
    subject: `review ${review}: ${title}`,
    what: `minutes of ${counted(lines, 'line', 'lines')} signed`,
  }),
  leads: ({ review }) => ({ kind: 'review', number: review }),
})
