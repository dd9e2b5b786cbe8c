import { z } from 'zod'
import { lotPlace, lotRecordedAt } from '@/shared/commands/lots/lot-place'
import { defineFace } from '@/shared/commands/face'
import { methodName } from '@/shared/commands/named'

export const withdrawLotTest = defineFace({
  label: 'Withdraw a test of a lot',
  done: 'Withdrew a test of a lot',
  may: { scope: 'programme', worksToo: ['supplier'], departments: ['quality'] },
  record: z.object({
    ...lotRecordedAt,
    lot: z.string(),
    method: z.string(),
    testedOn: z.string(),
    reason: z.string(),
  }),
  reads: ({ lot, method, testedOn, reason }) => ({
    subject: `lot ${lot}, ${methodName(method)}`,
    what: `tested on ${testedOn}`,
    words: reason,
  }),
  leads: ({ atSupplier, lot }) => lotPlace(atSupplier, lot),
})
