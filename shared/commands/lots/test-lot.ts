import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { counted, methodName } from '@/shared/commands/named'

export const testLot = defineFace({
  label: 'Record a test of a lot',
  done: 'Recorded a test of a lot',
  may: { scope: 'programme', departments: ['quality'] },
  record: z.object({
    lot: z.string(),
    method: z.string(),
    testedOn: z.string(),
    testedBy: z.string(),
    readings: z.number(),
  }),
  reads: ({ lot, method, testedOn, testedBy, readings }) => ({
    subject: `${lot}, ${methodName(method)}`,
    what: `${counted(readings, 'reading', 'readings')}, by ${testedBy} on ${testedOn}`,
  }),
  leads: ({ lot }) => ({ kind: 'lot', lot }),
})
