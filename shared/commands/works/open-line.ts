import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const openLine = defineFace({
  label: 'Open a line of the works',
  done: 'Opened a line of the works',
  may: { scope: 'works', opens: 'line', departments: ['production'] },
  record: z.object({ code: z.string(), name: z.string() }),
  reads: ({ code, name }) => ({ subject: `line ${code}`, what: name }),
  leads: ({ code }) => ({ kind: 'line', line: code }),
})
