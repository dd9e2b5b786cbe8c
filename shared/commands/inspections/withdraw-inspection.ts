import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { counted } from '@/shared/quantity/counted'

export const withdrawInspection = defineFace({
  label: 'Withdraw an inspection',
  done: 'Withdrew an inspection',
  may: { scope: 'programme', departments: ['quality'] },
  record: z.object({
    assembly: z.string(),
    inspectedOn: z.string(),
    jointsSeen: z.number().optional(),
    defects: z.number().optional(),
    reason: z.string(),
  }),
  reads: ({ assembly, inspectedOn, jointsSeen, defects, reason }) => ({
    subject: `assembly ${assembly}`,
    what: [
      `inspected on ${inspectedOn}`,
      ...(jointsSeen === undefined ? [] : [counted(jointsSeen, 'joint inspected', 'joints inspected')]),
      ...(defects === undefined ? [] : [counted(defects, 'defect', 'defects')]),
    ].join(', '),
    words: reason,
  }),
  leads: () => ({ kind: 'inspections' }),
})
