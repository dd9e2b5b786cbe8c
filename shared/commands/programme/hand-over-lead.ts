import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { fromTo } from '@/shared/commands/named'

export const handOverLead = defineFace({
  label: 'Hand the lead to another member',
  done: 'Handed the lead to another member',
  may: { scope: 'programme', lead: true },
  record: z.object({
    lead: z.string(),
    /** Entries of an earlier version do not say it; it was who handed it over. */
    insteadOf: z.string().optional(),
  }),
  reads: ({ lead, insteadOf }) => ({ subject: lead, what: insteadOf && fromTo(insteadOf, lead) }),
  leads: () => ({ kind: 'members' }),
})
