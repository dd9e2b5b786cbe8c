import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const takeInstrumentOutOfUse = defineFace({
  label: 'Take an instrument out of use',
  done: 'Took an instrument out of use',
  may: { scope: 'installation', administrator: true },
  record: z.object({ tag: z.string(), reason: z.string() }),
  reads: ({ tag, reason }) => ({ subject: `instrument ${tag}`, words: reason }),
  leads: () => ({ kind: 'instruments' }),
})
