import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { characteristicName, counted } from '@/shared/commands/named'

export const addReadings = defineFace({
  label: 'Add readings to a log',
  may: { scope: 'programme', departments: ['production', 'quality'] },
  record: z.object({
    log: z.string(),
    characteristic: z.string(),
    first: z.string(),
    last: z.string(),
    readings: z.number(),
  }),
  reads: ({ log, characteristic, first, last, readings }) => ({
    subject: `${log}, ${characteristicName(characteristic)}`,
    what: `${counted(readings, 'reading', 'readings')}, ${
      first === last ? minute(first) : `${minute(first)} to ${minute(last)}`
    } UTC`,
  }),
  leads: ({ log }) => ({ kind: 'log', log }),
})

/** '2026-03-04T10:11:12.345Z' as "2026-03-04 10:11". */
const minute = (instant: string): string => instant.slice(0, 16).replace('T', ' ')
