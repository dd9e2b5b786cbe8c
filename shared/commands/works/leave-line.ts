import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const leaveLine = defineFace({
  label: 'Say that the boards are not made on a line any more',
  done: 'Said that the boards are not made on a line any more',
  may: { scope: 'programme', departments: ['production'] },
  record: z.object({ line: z.string(), name: z.string(), reason: z.string() }),
  reads: ({ line, name, reason }) => ({ subject: `line ${line}`, what: name, words: reason }),
  leads: () => ({ kind: 'programme lines' }),
})
