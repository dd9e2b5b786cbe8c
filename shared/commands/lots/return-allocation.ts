import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { formatQuantity } from '@/shared/quantity/format'

export const returnAllocation = defineFace({
  label: 'Take pieces of a lot back into the store',
  done: 'Took pieces of a lot back into the store',
  may: { scope: 'works', of: 'supplier', departments: ['production', 'quality'] },
  record: z.object({
    atSupplier: z.string(),
    lot: z.string(),
    part: z.string(),
    from: z.string(),
    quantity: z.number(),
    reason: z.string(),
  }),
  reads: ({ lot, part, from, quantity, reason }) => ({
    subject: `lot ${lot}, ${part}`,
    what: `${formatQuantity(quantity, 'pieces', 9)} back from programme ${from}`,
    words: reason,
  }),
  leads: ({ atSupplier, lot }) => ({ kind: 'works lot', supplier: atSupplier, lot }),
})
