import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { fromTo, itemName } from '@/shared/commands/named'

export const restoreItem = defineFace({
  label: 'Bring an item back into the plan',
  done: 'Brought an item back into the plan',
  may: { scope: 'programme', departments: ['quality'], lead: true },
  record: z.object({ item: z.string(), title: z.string(), reason: z.string() }),
  reads: ({ item, title, reason }) => ({
    subject: itemName(item, title),
    what: fromTo('not applicable', 'in the plan'),
    words: reason,
  }),
  leads: ({ item }) => ({ kind: 'item', item }),
})
