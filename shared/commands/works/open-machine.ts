import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { machineKindName } from '@/shared/works/machine-kind'

export const openMachine = defineFace({
  label: 'Open a machine of a line',
  done: 'Opened a machine of a line',
  may: { scope: 'works', opens: 'machine', departments: ['production'] },
  record: z.object({ code: z.string(), line: z.string(), kind: z.string() }),
  reads: ({ code, line, kind }) => ({
    subject: `machine ${code}`,
    what: `${machineKindName(kind).toLowerCase()} of line ${line}`,
  }),
  leads: ({ code }) => ({ kind: 'machine', machine: code }),
})
