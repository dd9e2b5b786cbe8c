import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const withdrawDrawing = defineFace({
  label: 'Withdraw a drawing of a part',
  done: 'Withdrew a drawing of a part',
  may: { scope: 'works', of: 'part', departments: ['design', 'quality'] },
  record: z.object({ part: z.string(), fileName: z.string().nullable(), reason: z.string() }),
  reads: ({ part, fileName, reason }) => ({
    subject: `part ${part}`,
    what: fileName ?? undefined,
    words: reason,
  }),
  leads: ({ part }) => ({ kind: 'part', part, section: 'drawings' }),
})
