import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const takeLead = defineFace({
  label: 'Take the lead of a programme whose lead can no longer sign in',
  done: 'Took the lead of a programme whose lead can no longer sign in',
  may: { scope: 'programme', departments: ['quality'] },
  record: z.object({ lead: z.string(), insteadOf: z.string(), reason: z.string() }),
  reads: ({ lead, insteadOf, reason }) => ({ subject: lead, what: `instead of ${insteadOf}`, words: reason }),
  leads: () => ({ kind: 'members' }),
})
