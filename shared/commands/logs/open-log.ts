import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { characteristicName } from '@/shared/commands/named'
import { formatQuantity } from '@/shared/quantity/format'

export const openLog = defineFace({
  label: 'Open a log',
  done: 'Opened a log',
  may: { scope: 'works', of: 'machine', departments: ['production', 'quality'] },
  record: z.object({
    code: z.string(),
    characteristic: z.string(),
    line: z.string(),
    machine: z.string(),
    instrument: z.string().nullable(),
    /** Not in what was recorded before machines had logs. */
    machineId: z.string().optional(),
    onlyFor: z.string().nullish(),
    everyH: z.number().nullish(),
  }),
  reads: ({ code, characteristic, line, machine, instrument, onlyFor, everyH }) => ({
    subject: `log ${code}`,
    what: `${characteristicName(characteristic)} of ${machine}, ${line}${instrument ? `, by ${instrument}` : ''}${
      everyH ? `, every ${formatQuantity(everyH, 'h')}` : ''
    }${onlyFor ? `, of programme ${onlyFor} alone` : ''}`,
  }),
  leads: ({ code, machine, machineId }) =>
    machineId === undefined ? { kind: 'log', log: code } : { kind: 'machine', machine, log: code },
})
