import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { ruleName } from '@/shared/commands/named'
import { boundsInWords, concessionBounds } from '@/shared/commands/signatures/concession-bounds'
import { DEPARTMENTS } from '@/shared/plan/department'

export const requestConcession = defineFace({
  label: 'Ask for a concession',
  done: 'Asked for a concession',
  may: { scope: 'programme', departments: DEPARTMENTS },
  record: z.object({
    number: z.number(),
    rule: z.string(),
    found: z.string(),
    why: z.string(),
    ...concessionBounds.shape,
  }),
  reads: ({ number, rule, found, why, ...bounds }) => ({
    subject: `concession ${number}, ${ruleName(rule)}`,
    what: [found, boundsInWords(bounds)].filter(Boolean).join(' '),
    words: why,
  }),
  leads: ({ number }) => ({ kind: 'concession', number }),
})
