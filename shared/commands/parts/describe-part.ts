import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const describePart = defineFace({
  label: 'Describe a part',
  done: 'Described a part',
  may: { scope: 'works', opens: 'part', departments: ['design', 'quality'] },
  record: z.object({ code: z.string(), values: z.object({ description: z.string() }), reason: z.string() }),
  reads: ({ code, values, reason }) => ({
    subject: `part ${code}`,
    what: values.description,
    words: reason,
  }),
  leads: ({ code }) => ({ kind: 'part', part: code }),
})
