import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const withdrawPart = defineFace({
  label: 'Withdraw a part',
  done: 'Withdrew a part',
  may: { scope: 'works', of: 'part', departments: ['design', 'quality'] },
  record: z.object({ part: z.string(), description: z.string(), reason: z.string() }),
  reads: ({ part, description, reason }) => ({ subject: `part ${part}`, what: description, words: reason }),
  leads: ({ part }) => ({ kind: 'part', part }),
})
