import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { itemName } from '@/shared/commands/named'
import { foldedList } from '@/shared/quantity/folded-names'
import { DEPARTMENTS } from '@/shared/plan/department'

export const openOptionStudy = defineFace({
  label: 'Open an option study',
  done: 'Opened an option study',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  record: z.object({
    number: z.number(),
    itemKey: z.string(),
    title: z.string(),
    alternatives: z.array(z.object({ name: z.string() })),
  }),
  reads: ({ number, itemKey, title, alternatives }) => ({
    subject: `study ${number}, ${itemName(itemKey)}`,
    what: foldedList(alternatives.map(({ name }) => name)),
    words: title,
  }),
  leads: ({ number }) => ({ kind: 'study', number }),
})
