import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const reinstatePart = defineFace({
  label: 'Take a withdrawn part back into use',
  done: 'Took a withdrawn part back into use',
  may: { scope: 'works', of: 'part', departments: ['design', 'quality'] },
  record: z.object({ part: z.string(), description: z.string(), reason: z.string() }),
  reads: ({ part, description, reason }) => ({ subject: `part ${part}`, what: description, words: reason }),
  leads: ({ part }) => ({ kind: 'part', part }),
})
