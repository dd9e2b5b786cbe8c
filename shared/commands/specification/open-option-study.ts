import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { itemName } from '@/shared/commands/named'
import { alternativeInWords, alternativeRecord } from '@/shared/commands/specification/alternative-record'
import { DEPARTMENTS } from '@/shared/plan/department'

export const openOptionStudy = defineFace({
  label: 'Open an option study',
  done: 'Opened an option study',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  record: z.object({
    number: z.number(),
    itemKey: z.string(),
    title: z.string(),
    /** Of a study of an earlier version only the names are told. */
    alternatives: z.array(z.union([alternativeRecord, z.object({ name: z.string() })])),
  }),
  reads: ({ number, itemKey, title, alternatives }) => ({
    subject: `study ${number}, ${itemName(itemKey)}`,
    what: alternatives
      .map((alternative) => ('values' in alternative ? alternativeInWords(alternative) : alternative.name))
      .join(' | '),
    words: title,
  }),
  leads: ({ number }) => ({ kind: 'study', number }),
})
