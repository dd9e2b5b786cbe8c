import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { itemName } from '@/shared/commands/named'
import { DEPARTMENTS } from '@/shared/plan/department'

export const proposeSetAside = defineFace({
  label: 'Propose an item as not applicable',
  done: 'Proposed an item as not applicable',
  may: { scope: 'programme', departments: DEPARTMENTS },
  record: z.object({ item: z.string(), title: z.string(), reason: z.string() }),
  reads: ({ item, title, reason }) => ({
    subject: itemName(item, title),
    what: 'proposed as not applicable; it stays in the plan until quality agrees',
    words: reason,
  }),
  leads: ({ item }) => ({ kind: 'item', item }),
})
