import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { machineKindName } from '@/shared/works/machine-kind'

export const closeMachine = defineFace({
  label: 'Close a machine',
  done: 'Closed a machine',
  may: { scope: 'works', of: 'machine', departments: ['production'] },
  record: z.object({ machine: z.string(), kind: z.string(), line: z.string(), reason: z.string() }),
  reads: ({ machine, kind, line, reason }) => ({
    subject: `machine ${machine}`,
    what: `${machineKindName(kind).toLowerCase()} of line ${line}`,
    words: reason,
  }),
  leads: ({ machine }) => ({ kind: 'machine', machine }),
})
