import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { counted, parameterName, valueInBrief } from '@/shared/commands/named'

export const openProgramme = defineFace({
  label: 'Open a programme',
  done: 'Opened a programme',
  may: { scope: 'programme', anyone: true },
  record: z.object({
    code: z.string(),
    title: z.string(),
    values: z.record(z.string(), z.union([z.string(), z.number(), z.null()])),
    /** Entries from before there were lessons have none. */
    lessons: z.array(z.unknown()).optional(),
  }),
  reads: ({ code, title, values, lessons = [] }) => ({
    subject: `${code}, ${title}`,
    what: [
      ...Object.entries(values).map(([key, value]) => `${parameterName(key)}: ${valueInBrief(key, value)}`),
      ...(lessons.length > 0
        ? [`with ${counted(lessons.length, 'lesson', 'lessons')} of earlier programmes`]
        : []),
    ].join('; '),
  }),
  leads: () => ({ kind: 'route card' }),
})
