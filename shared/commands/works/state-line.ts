import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const stateLine = defineFace({
  label: 'State a line that the boards are made on',
  done: 'Stated a line that the boards are made on',
  may: { scope: 'programme', departments: ['production'] },
  record: z.object({ line: z.string(), name: z.string() }),
  reads: ({ line, name }) => ({ subject: `line ${line}`, what: name }),
  leads: () => ({ kind: 'programme lines' }),
})
