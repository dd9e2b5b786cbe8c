import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { characteristicName } from '@/shared/commands/named'

export const openLog = defineFace({
  label: 'Open a log',
  done: 'Opened a log',
  may: { scope: 'programme', departments: ['production', 'quality'] },
  record: z.object({
    code: z.string(),
    characteristic: z.string(),
    line: z.string(),
    machine: z.string(),
    instrument: z.string().nullable(),
  }),
  reads: ({ code, characteristic, line, machine, instrument }) => ({
    subject: `log ${code}`,
    what: `${characteristicName(characteristic)} of ${machine}, ${line}${instrument ? `, by ${instrument}` : ''}`,
  }),
  leads: ({ code }) => ({ kind: 'log', log: code }),
})
