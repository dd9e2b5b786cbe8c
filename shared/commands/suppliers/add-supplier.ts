import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const addSupplier = defineFace({
  label: 'Add a supplier',
  done: 'Added a supplier',
  may: { scope: 'works', opens: 'supplier', departments: ['quality'] },
  record: z.object({ supplier: z.string() }),
  reads: ({ supplier }) => ({ subject: `supplier ${supplier}` }),
  leads: ({ supplier }) => ({ kind: 'of the works', subject: { kind: 'supplier', code: supplier } }),
})
