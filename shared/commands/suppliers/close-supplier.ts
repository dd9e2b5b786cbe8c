import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const closeSupplier = defineFace({
  label: 'Close a supplier',
  done: 'Closed a supplier',
  may: { scope: 'works', of: 'supplier', departments: ['quality'] },
  record: z.object({ supplier: z.string(), reason: z.string() }),
  reads: ({ supplier, reason }) => ({ subject: `supplier ${supplier}`, words: reason }),
  leads: ({ supplier }) => ({ kind: 'of the works', subject: { kind: 'supplier', code: supplier } }),
})
