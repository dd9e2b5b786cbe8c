import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { characteristicName } from '@/shared/commands/named'
import { counted } from '@/shared/quantity/counted'

export const addReadings = defineFace({
  label: 'Add readings to a log',
  done: 'Added readings to a log',
  may: { scope: 'programme', departments: ['production', 'quality'] },
  record: z.object({
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
  leads: ({ log }) => ({ kind: 'log', log }),
})
