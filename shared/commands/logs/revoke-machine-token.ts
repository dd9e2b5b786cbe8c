import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const revokeMachineToken = defineFace({
  label: 'Stop a machine pushing readings',
  done: 'Stopped a machine pushing readings',
  may: { scope: 'programme', departments: ['production', 'quality'] },
  record: z.object({ name: z.string() }),
  reads: ({ name }) => ({ subject: name }),
  leads: () => ({ kind: 'machines' }),
})
