import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const withdrawInspection = defineFace({
  label: 'Withdraw an inspection',
  done: 'Withdrew an inspection',
  may: { scope: 'programme', departments: ['quality'] },
  record: z.object({ assembly: z.string(), inspectedOn: z.string(), reason: z.string() }),
  reads: ({ assembly, inspectedOn, reason }) => ({
    subject: assembly,
    what: `inspected on ${inspectedOn}`,
    words: reason,
  }),
  leads: () => ({ kind: 'inspections' }),
})
