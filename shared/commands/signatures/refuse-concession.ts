import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { ruleName } from '@/shared/commands/named'

export const refuseConcession = defineFace({
  label: 'Refuse a concession',
  done: 'Refused a concession',
  may: { scope: 'programme', departments: ['design', 'quality'] },
  record: z.object({
    concession: z.number(),
    rule: z.string(),
    wasGranted: z.boolean(),
    reason: z.string(),
  }),
  reads: ({ concession, rule, wasGranted, reason }) => ({
    subject: `concession ${concession}, ${ruleName(rule)}`,
    what: wasGranted ? 'taken back after it was granted' : 'refused',
    words: reason,
  }),
  leads: ({ concession }) => ({ kind: 'concession', number: concession }),
})
