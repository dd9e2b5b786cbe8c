import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { itemName } from '@/shared/commands/named'
import { DEPARTMENTS } from '@/shared/plan/department'

export const attachEvidence = defineFace({
  label: 'Attach evidence to an item',
  done: 'Attached evidence to an item',
  may: { scope: 'programme', departments: DEPARTMENTS },
  record: z.object({
    itemKey: z.string(),
    kind: z.string(),
    note: z.string(),
    fileName: z.string().nullable(),
    url: z.string().nullable(),
  }),
  reads: ({ itemKey, kind, note, fileName, url }) => ({
    subject: itemName(itemKey),
    what: `${kind}: ${fileName ?? url}`,
    words: note,
  }),
  leads: ({ itemKey }) => ({ kind: 'item', item: itemKey, part: 'evidence' }),
})
