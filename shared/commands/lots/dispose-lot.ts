import { z } from 'zod'
import { lotPlace, lotRecordedAt } from '@/shared/commands/lots/lot-place'
import { defineFace } from '@/shared/commands/face'
import { fromTo } from '@/shared/commands/named'

export const disposeLot = defineFace({
  label: 'Record the disposition of a lot',
  done: 'Recorded the disposition of a lot',
  may: { scope: 'programme', worksToo: ['supplier'], departments: ['quality'] },
  record: z.object({
    ...lotRecordedAt,
    lot: z.string(),
    part: z.string(),
    verdict: z.string(),
    before: z.string().nullable(),
    reason: z.string(),
  }),
  reads: ({ lot, part, verdict, before, reason }) => ({
    subject: `lot ${lot}, ${part}`,
    what: before === null ? verdict : fromTo(before, verdict),
    words: reason,
  }),
  leads: ({ atSupplier, lot }) => lotPlace(atSupplier, lot),
})
