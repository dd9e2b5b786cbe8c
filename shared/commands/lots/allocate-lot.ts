import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { formatQuantity } from '@/shared/quantity/format'

export const allocateLot = defineFace({
  label: 'Allocate a lot to a programme',
  done: 'Allocated a lot to a programme',
  may: { scope: 'works', of: 'supplier', departments: ['production', 'quality'] },
  record: z.object({
    atSupplier: z.string(),
    lot: z.string(),
    part: z.string(),
    to: z.string(),
    quantity: z.number(),
    outOfOrder: z.string().nullable(),
  }),
  reads: ({ lot, part, to, quantity, outOfOrder }) => ({
    subject: `lot ${lot}, ${part}`,
    what: `${formatQuantity(quantity, 'pieces', 9)} to programme ${to}`,
    ...(outOfOrder !== null && { words: outOfOrder }),
  }),
  leads: ({ atSupplier, lot }) => ({ kind: 'works lot', supplier: atSupplier, lot }),
})
