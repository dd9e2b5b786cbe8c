import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const revokeMachineToken = defineFace({
  label: 'Stop a machine pushing readings',
  done: 'Stopped a machine pushing readings',
  may: { scope: 'programme', worksToo: ['machine'], departments: ['production', 'quality'] },
  record: z.object({ machine: z.string().optional(), name: z.string() }),
  reads: ({ name }) => ({ subject: name }),
  leads: ({ machine }) =>
    machine === undefined ? { kind: 'machines' } : { kind: 'machine', machine, part: 'tokens' },
})
