import { z } from 'zod'
import { correctionRecorded } from '@/shared/commands/correction-recorded'
import { defineFace } from '@/shared/commands/face'
import { correctedInWords, inspectionFieldsCorrected } from '@/shared/records/correction'

export const correctInspection = defineFace({
  label: 'Correct an inspection',
  done: 'Corrected an inspection',
  may: { scope: 'programme', departments: ['quality'] },
  record: z.object({ subjectId: z.string(), assembly: z.string(), ...correctionRecorded.shape }),
  reads: ({ assembly, before, after, reason }) => ({
    subject: `assembly ${assembly}`,
    what: correctedInWords(inspectionFieldsCorrected(before, after)),
    words: reason,
  }),
  leads: ({ subjectId }) => ({ kind: 'inspection', inspection: subjectId }),
})
