import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { calibrationInWords, calibrationRecord } from '@/shared/commands/instruments/calibration'
import { fromTo } from '@/shared/commands/named'

export const calibrateInstrument = defineFace({
  label: 'Record a calibration',
  done: 'Recorded a calibration',
  may: { scope: 'installation', administrator: true },
  record: z.object({ tag: z.string(), ...calibrationRecord.shape, before: calibrationRecord }),
  reads: ({ tag, before, ...calibration }) => ({
    subject: `instrument ${tag}`,
    what: fromTo(calibrationInWords(before), calibrationInWords(calibration)),
  }),
  leads: () => ({ kind: 'instruments' }),
})
