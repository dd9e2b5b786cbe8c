import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { counted } from '@/shared/quantity/counted'
import { DEPARTMENTS } from '@/shared/plan/department'

export const openReview = defineFace({
  label: 'Open a design review',
  done: 'Opened a design review',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  record: z.object({
    number: z.number(),
    title: z.string(),
    heldOn: z.string(),
    chairName: z.string(),
    present: z.array(z.unknown()),
  }),
  reads: ({ number, title, heldOn, chairName, present }) => ({
    subject: `review ${number}: ${title}`,
    what: `held on ${heldOn}, chaired by ${chairName}, ${counted(present.length, 'person', 'people')} present`,
  }),
  leads: ({ number }) => ({ kind: 'review', number }),
})
