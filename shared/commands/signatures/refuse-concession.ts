import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { ruleName } from '@/shared/commands/named'
import { concessionInWords, recordedDeparture } from '@/shared/commands/signatures/departure-in-words'

export const refuseConcession = defineFace({
  label: 'Refuse a concession or deviation permit',
  done: 'Refused a concession or deviation permit',
  may: { scope: 'programme', departments: ['design', 'quality'] },
  record: z.object({
    concession: z.number(),
    rule: z.string(),
    wasGranted: z.boolean(),
    reason: z.string(),
    permit: recordedDeparture.nullish(),
  }),
  reads: ({ concession, rule, wasGranted, reason, permit }) => ({
    subject: `${concessionInWords(concession, permit)}, ${ruleName(rule)}`,
    what: wasGranted ? 'taken back after it was granted' : 'refused',
    words: reason,
  }),
  leads: ({ concession }) => ({ kind: 'concession', number: concession }),
})
