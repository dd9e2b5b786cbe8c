import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { correctedInWords, lotFieldsCorrected } from '@/shared/records/correction'
import { correctionRecorded } from '@/shared/commands/correction-recorded'

export const correctLot = defineFace({
  label: 'Correct what was noted of a lot',
  done: 'Corrected what was noted of a lot',
  may: { scope: 'programme', departments: ['quality', 'production'] },
  record: z.object({ lot: z.string(), ...correctionRecorded.shape }),
  reads: ({ lot, before, after, reason }) => ({
    subject: `lot ${lot}`,
    what: correctedInWords(lotFieldsCorrected(before, after)),
    words: reason,
  }),
  leads: ({ lot }) => ({ kind: 'lot', lot }),
})
