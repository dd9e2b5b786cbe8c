import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { fromTo } from '@/shared/commands/named'

export const disposeLot = defineFace({
  label: 'Record the disposition of a lot',
  done: 'Recorded the disposition of a lot',
  may: { scope: 'programme', departments: ['quality'] },
  record: z.object({
    lot: z.string(),
    part: z.string(),
    verdict: z.string(),
    before: z.string().nullable(),
    reason: z.string(),
  }),
  reads: ({ lot, part, verdict, before, reason }) => ({
    subject: `lot ${lot}, ${part}`,
    what: before === null ? verdict : fromTo(before, verdict),
    words: reason,
  }),
  leads: ({ lot }) => ({ kind: 'lot', lot }),
})
