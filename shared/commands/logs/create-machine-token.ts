import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const createMachineToken = defineFace({
  label: 'Let a machine push readings',
  done: 'Let a machine push readings',
  may: { scope: 'programme', departments: ['production', 'quality'] },
  record: z.object({ name: z.string() }),
  reads: ({ name }) => ({ subject: name }),
  leads: () => ({ kind: 'machines' }),
})
