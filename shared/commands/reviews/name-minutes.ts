import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { itemName } from '@/shared/commands/named'
import { DEPARTMENTS } from '@/shared/plan/department'

export const nameMinutes = defineFace({
  label: 'Name minutes as evidence of an item',
  done: 'Named minutes as evidence of an item',
  may: { scope: 'programme', departments: DEPARTMENTS },
  record: z.object({ itemKey: z.string(), review: z.number(), note: z.string() }),
  reads: ({ itemKey, review, note }) => ({
    subject: itemName(itemKey),
    what: `minutes of review ${review}`,
    words: note,
  }),
  leads: ({ itemKey }) => ({ kind: 'item', item: itemKey, part: 'evidence' }),
})
