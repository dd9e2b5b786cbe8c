import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const closeLine = defineFace({
  label: 'Close a line of the works',
  done: 'Closed a line of the works',
  may: { scope: 'works', of: 'line', departments: ['production'] },
  record: z.object({ line: z.string(), name: z.string(), reason: z.string() }),
  reads: ({ line, name, reason }) => ({ subject: `line ${line}`, what: name, words: reason }),
  leads: ({ line }) => ({ kind: 'line', line }),
})
