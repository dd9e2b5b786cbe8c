import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { parameterName, valueInBrief } from '@/shared/commands/named'
import { counted } from '@/shared/quantity/counted'

export const openProgramme = defineFace({
  label: 'Open a programme',
  done: 'Opened a programme',
  may: { scope: 'programme', opens: 'programme', anyone: true },
  record: z.object({
    code: z.string(),
    title: z.string(),
    values: z.record(z.string(), z.union([z.string(), z.number(), z.null()])),
    /** Entries from before there were lessons have none. */
    lessons: z.array(z.unknown()).optional(),
    /** What the company asks of every programme, and the values that it prefers; not there in older entries. */
    companyRules: z.array(z.unknown()).optional(),
    preferences: z.array(z.unknown()).optional(),
    /** What it took over from another programme. */
    takenOver: z
      .object({
        from: z.string(),
        values: z.array(z.unknown()),
        requirements: z.array(z.unknown()),
        items: z.array(z.unknown()),
        setAside: z.array(z.unknown()),
      })
      .optional(),
  }),
  reads: ({ code, title, values, lessons = [], companyRules = [], preferences = [], takenOver }) => ({
    subject: `${code}, ${title}`,
    what: [
      ...Object.entries(values).map(([key, value]) => `${parameterName(key)}: ${valueInBrief(key, value)}`),
      ...(lessons.length > 0
        ? [`with ${counted(lessons.length, 'lesson', 'lessons')} of earlier programmes`]
        : []),
      ...(companyRules.length > 0
        ? [`with ${counted(companyRules.length, 'company rule', 'company rules')}`]
        : []),
      ...(preferences.length > 0
        ? [`with ${counted(preferences.length, 'preferred value', 'preferred values')}`]
        : []),
      ...(takenOver
        ? [
            `taken over from ${takenOver.from}: ${[
              counted(takenOver.values.length, 'value', 'values'),
              counted(takenOver.requirements.length, 'limit', 'limits'),
              counted(takenOver.items.length, 'item', 'items'),
              `${counted(takenOver.setAside.length, 'item', 'items')} proposed as not applicable`,
            ].join(', ')}`,
          ]
        : []),
    ].join('; '),
  }),
  leads: () => ({ kind: 'route card' }),
})
