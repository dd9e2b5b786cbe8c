import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const closeMachine = defineFace({
  label: 'Close a machine',
  done: 'Closed a machine',
  may: { scope: 'works', of: 'machine', departments: ['production'] },
  record: z.object({ machine: z.string(), reason: z.string() }),
  reads: ({ machine, reason }) => ({ subject: `machine ${machine}`, words: reason }),
  leads: ({ machine }) => ({ kind: 'machine', machine }),
})
