import { z } from 'zod'
import { lotPlace, lotRecordedAt } from '@/shared/commands/lots/lot-place'
import { defineFace } from '@/shared/commands/face'
import { correctedInWords, lotFieldsCorrected } from '@/shared/records/correction'
import { correctionRecorded } from '@/shared/commands/correction-recorded'

export const correctLot = defineFace({
  label: 'Correct what was noted of a lot',
  done: 'Corrected what was noted of a lot',
  may: { scope: 'programme', worksToo: ['supplier'], departments: ['quality', 'production'] },
  record: z.object({ ...lotRecordedAt, lot: z.string(), ...correctionRecorded.shape }),
  reads: ({ lot, before, after, reason }) => ({
    subject: `lot ${lot}`,
    what: correctedInWords(lotFieldsCorrected(before, after)),
    words: reason,
  }),
  leads: ({ atSupplier, lot }) => lotPlace(atSupplier, lot),
})
