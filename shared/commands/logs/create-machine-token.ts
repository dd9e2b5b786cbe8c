import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const createMachineToken = defineFace({
  label: 'Let a machine push readings',
  done: 'Let a machine push readings',
  may: { scope: 'works', of: 'machine', departments: ['production', 'quality'] },
  record: z.object({ machine: z.string().optional(), name: z.string() }),
  reads: ({ name }) => ({ subject: name }),
  leads: ({ machine }) =>
    machine === undefined ? { kind: 'machines' } : { kind: 'machine', machine, part: 'tokens' },
})
