import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { valuesInWords } from '@/shared/records/values-in-words'
import { PART_COLUMNS } from '@/shared/works/part-columns'

export const describePart = defineFace({
  label: 'Describe a part',
  done: 'Described a part',
  may: { scope: 'works', opens: 'part', departments: ['design', 'quality'] },
  record: z.object({ code: z.string(), values: z.record(z.string(), z.unknown()), reason: z.string() }),
  reads: ({ code, values, reason }) => ({
    subject: `part ${code}`,
    what: valuesInWords(PART_COLUMNS, values),
    words: reason,
  }),
  leads: ({ code }) => ({ kind: 'part', part: code }),
})
