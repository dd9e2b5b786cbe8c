import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { reason, worksCode } from '@/lib/commands/inputs'
import { openMachineOf } from '@/lib/commands/works/load-machine'

/** Nothing more is logged on it; what was stays, and its tokens push nothing any more. */
export const closeMachine = defineCommand({
  name: 'close-machine',
  input: z.strictObject({ machine: worksCode('The machine'), reason }),
  load: (tx, _input, { trailId }) => openMachineOf(tx, trailId),
  decide: ({ code, kind, line }, { reason: why }) => ({
    change: { why },
    record: { machine: code, kind, line: line.code, reason: why },
    result: { machine: code },
  }),
  async apply(tx, { why }, { trailId, actor, now }) {
    await tx.machine.update({
      where: { id: trailId },
      data: { closedById: actor.personId, closedAt: now, closedWhy: why },
    })
  },
})
