import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const leaveLine = defineFace({
  label: 'Say that the boards are not made on a line any more',
  done: 'Said that the boards are not made on a line any more',
  may: { scope: 'programme', departments: ['production'] },
  record: z.object({ line: z.string(), reason: z.string() }),
  reads: ({ line, reason }) => ({ subject: `line ${line}`, words: reason }),
  leads: () => ({ kind: 'programme lines' }),
})
