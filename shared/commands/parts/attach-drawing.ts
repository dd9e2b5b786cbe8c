import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const attachDrawing = defineFace({
  label: 'Attach a drawing to a part',
  done: 'Attached a drawing to a part',
  may: { scope: 'works', of: 'part', departments: ['design', 'quality'] },
  record: z.object({ part: z.string(), note: z.string(), fileName: z.string() }),
  reads: ({ part, note, fileName }) => ({ subject: `part ${part}`, what: fileName, words: note }),
  leads: ({ part }) => ({ kind: 'part', part, section: 'drawings' }),
})
