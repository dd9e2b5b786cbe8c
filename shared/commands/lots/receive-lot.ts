import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { formatQuantity } from '@/shared/quantity/format'

export const receiveLot = defineFace({
  label: 'Receive a lot',
  done: 'Received a lot',
  may: { scope: 'programme', departments: ['quality', 'production'] },
  record: z.object({
    code: z.string(),
    part: z.string(),
    supplier: z.string(),
    quantity: z.number(),
    receivedOn: z.string(),
    supplierResult: z.string(),
  }),
  reads: ({ code, part, supplier, quantity, receivedOn, supplierResult }) => ({
    subject: `${code}, ${part}`,
    what: `${formatQuantity(quantity, 'pieces', 9)} from ${supplier}, received on ${receivedOn}`,
    words: supplierResult,
  }),
  leads: ({ code }) => ({ kind: 'lot', lot: code }),
})
