import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { partDifference } from '@/shared/works/part-difference'

const VALUES = z.record(z.string(), z.unknown())

export const revisePart = defineFace({
  label: 'Revise a part',
  done: 'Revised a part',
  may: { scope: 'works', of: 'part', departments: ['design', 'quality'] },
  record: z.object({
    part: z.string(),
    number: z.number(),
    before: VALUES,
    values: VALUES,
    reason: z.string(),
  }),
  reads: ({ part, number, before, values, reason }) => ({
    subject: `part ${part}, revision ${number}`,
    what: partDifference(before, values).join('; '),
    words: reason,
  }),
  leads: ({ part }) => ({ kind: 'part', part }),
})
