import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const handOverLead = defineFace({
  label: 'Hand the lead to another member',
  done: 'Handed the lead to another member',
  may: { scope: 'programme', lead: true },
  record: z.object({ lead: z.string() }),
  reads: ({ lead }) => ({ subject: lead }),
  leads: () => ({ kind: 'members' }),
})
