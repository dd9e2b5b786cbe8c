import { z } from 'zod'
import { lotPlace, lotRecordedAt } from '@/shared/commands/lots/lot-place'
import { defineFace } from '@/shared/commands/face'
import { methodName } from '@/shared/commands/named'
import type { TestMethod } from '@/shared/methods/test-method'
import { TEST_METHODS } from '@/shared/methods/test-methods'
import { ownMember } from '@/shared/own-member'
import { counted } from '@/shared/quantity/counted'
import { valuesInWords } from '@/shared/records/values-in-words'

export const testLot = defineFace({
  label: 'Record a test of a lot',
  done: 'Recorded a test of a lot',
  may: { scope: 'programme', worksToo: ['supplier'], departments: ['quality'] },
  record: z.object({
    ...lotRecordedAt,
    lot: z.string(),
    method: z.string(),
    testedOn: z.string(),
    testedBy: z.string(),
    readings: z.number(),
    instrument: z.string().nullish(),
    conditions: z.record(z.string(), z.unknown()).optional(),
  }),
  reads: ({ lot, method, testedOn, testedBy, readings, instrument, conditions = {} }) => {
    const known: TestMethod | undefined = ownMember(TEST_METHODS, method)
    return {
      subject: `lot ${lot}, ${methodName(method)}`,
      what: [
        `${counted(readings, 'reading', 'readings')}, by ${testedBy} on ${testedOn}`,
        ...(instrument ? [`with ${instrument}`] : []),
        valuesInWords(known?.conditions ?? {}, conditions),
      ]
        .filter(Boolean)
        .join(', '),
    }
  },
  leads: ({ atSupplier, lot }) => lotPlace(atSupplier, lot),
})
