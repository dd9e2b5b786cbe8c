import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { characteristicName } from '@/shared/commands/named'
import { counted } from '@/shared/quantity/counted'

export const addReadings = defineFace({
  label: 'Add readings to a log',
  done: 'Added readings to a log',
  may: { scope: 'works', of: 'machine', departments: ['production', 'quality'] },
  record: z.object({
    /** Not in what was recorded before machines had logs. */
    machine: z.string().optional(),
    log: z.string(),
    characteristic: z.string(),
    first: z.string(),
    last: z.string(),
    readings: z.number(),
  }),
  reads: ({ log, characteristic, first, last, readings }, moment) => ({
    subject: `log ${log}, ${characteristicName(characteristic)}`,
    what: `${counted(readings, 'reading', 'readings')}, ${
      first === last ? moment(first) : `${moment(first)} to ${moment(last)}`
    }`,
  }),
  leads: ({ machine, log }) =>
    machine === undefined ? { kind: 'log', log } : { kind: 'machine', machine, log },
})
