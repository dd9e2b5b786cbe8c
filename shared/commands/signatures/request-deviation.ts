import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { ruleName } from '@/shared/commands/named'
import { boundsInWords, concessionBounds } from '@/shared/commands/signatures/concession-bounds'
import {
  concessionInWords,
  departureInWords,
  recordedDeparture,
} from '@/shared/commands/signatures/departure-in-words'
import { DEPARTMENTS } from '@/shared/plan/department'

export const requestDeviation = defineFace({
  label: 'Ask for a deviation permit',
  done: 'Asked for a deviation permit',
  may: { scope: 'programme', departments: DEPARTMENTS },
  record: z.object({
    number: z.number(),
    rule: z.string(),
    permit: recordedDeparture,
    why: z.string(),
    ...concessionBounds.shape,
  }),
  reads: ({ number, rule, permit, why, ...bounds }) => ({
    subject: `${concessionInWords(number, permit)}, ${ruleName(rule)}`,
    what: `${departureInWords(permit)} ${boundsInWords(bounds)}`.trim(),
    words: why,
  }),
  leads: ({ number }) => ({ kind: 'concession', number }),
})
