import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { methodName } from '@/shared/commands/named'
import { counted } from '@/shared/quantity/counted'

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
