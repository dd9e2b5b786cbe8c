import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { calibrationInWords, calibrationRecord } from '@/shared/commands/instruments/calibration'

export const addInstrument = defineFace({
  label: 'Add an instrument',
  done: 'Added an instrument',
  may: { scope: 'installation', administrator: true },
  record: z.object({ tag: z.string(), measures: z.string(), ...calibrationRecord.shape }),
  reads: ({ tag, measures, ...calibration }) => ({
    subject: `instrument ${tag}, ${measures}`,
    what: calibrationInWords(calibration),
  }),
  leads: () => ({ kind: 'instruments' }),
})
